/**
 * What the workshop has promised, has and has shipped, as a journal of what happened: its entries, what each means and
 * which follows which. Pure values; where they are kept is the business of {@code book.db} below.
 *
 * <p>The journal is the truth, all else sums over it: entries say in data what happened and name persons by key, contents
 * lie beside them by hash, and each entry is chained to the one before. A test makes the sums anew after every kind of
 * trouble.
 */
@NullMarked
package boltlore.book;

import org.jspecify.annotations.NullMarked;
