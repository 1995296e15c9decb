/**
 * What all rooms of the desk stand in: who may ask, what a page looks like, and how a form is answered. Alone knows the web
 * framework and the templates' engine.
 *
 * <p>The pages are HTML first: forms and links that work without script, templates that escape by place, one style sheet. A
 * room answers a value with a value and knows nothing of the web, so it is tried without a browser. An act has a name, and
 * the book keeps the names of those that were done, in the transaction that did them: a form sent twice is done once, also
 * after a restart.
 */
@NullMarked
package boltlore.desk.frame;

import org.jspecify.annotations.NullMarked;
