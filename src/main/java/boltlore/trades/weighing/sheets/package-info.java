/** The weight statement of one order: pages and words over a weighing. Computes nothing of its own. */
@NullMarked
package boltlore.trades.weighing.sheets;

import org.jspecify.annotations.NullMarked;
