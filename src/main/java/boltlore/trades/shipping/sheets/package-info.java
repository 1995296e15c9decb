/** The shipping papers of one order: pages, drawings and words over its crates. Computes nothing of its own. */
@NullMarked
package boltlore.trades.shipping.sheets;

import org.jspecify.annotations.NullMarked;
