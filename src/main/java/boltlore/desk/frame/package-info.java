/**
 * What all rooms of the desk stand in: who may ask, what a page looks like, and how a form is answered. Alone knows the web
 * framework and the templates' engine.
 */
@NullMarked
package boltlore.desk.frame;

import org.jspecify.annotations.NullMarked;
