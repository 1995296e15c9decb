/**
 * What a person does with orders in the book: takes one down, quotes it, confirms it, moves it on. Commands and pages make
 * the same calls; each is one transaction.
 *
 * <p>Confirming freezes what was quoted, not what the catalogue would give on the day. The catalogue's files are kept by
 * content, so that sheets of an old order come from the files as they were, and its kit's hash says whether they still do.
 *
 * <p>Hold points are judged from the book alone: what the trades find of a kit and what it asks of the stores are kept when
 * it is quoted or a change is proposed, so that confirming resolves nothing, and what all orders lack is one sum over open
 * needs. The dated plan with packs and lead times nets those sums too.
 */
@NullMarked
package boltlore.book.orders;

import org.jspecify.annotations.NullMarked;
