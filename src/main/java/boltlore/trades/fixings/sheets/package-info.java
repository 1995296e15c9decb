/** The fixings sheet of one order: joints to tighten and bags to count. Computes nothing of its own. */
@NullMarked
package boltlore.trades.fixings.sheets;

import org.jspecify.annotations.NullMarked;
