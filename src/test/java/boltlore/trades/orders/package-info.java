/** The sheets of all trades for one order, looked at together. */
@NullMarked
package boltlore.trades.orders;

import org.jspecify.annotations.NullMarked;
