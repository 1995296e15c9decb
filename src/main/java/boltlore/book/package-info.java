/**
 * What the workshop has promised, has and has shipped, as a journal of what happened: its entries, what each means and
 * which follows which. Pure values; where they are kept is the business of {@code book.db} below.
 */
@NullMarked
package boltlore.book;

import org.jspecify.annotations.NullMarked;
