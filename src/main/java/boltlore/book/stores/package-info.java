/**
 * What a person does in the stores and on the shop floor, each call one transaction of the book: receives, counts, moves, scraps,
 * buys, picks, takes pieces through the coating shop, keeps remnants and records.
 *
 * <p>What was called complete, packed or counted is withdrawn by whatever moves afterwards, in the sums, not by a check at
 * each call.
 */
@NullMarked
package boltlore.book.stores;

import org.jspecify.annotations.NullMarked;
