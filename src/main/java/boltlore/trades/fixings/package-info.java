/** What is bolted to what in one kit: bolts by joint with torque and lock, count by weight, and the formulas behind them. */
@NullMarked
package boltlore.trades.fixings;

import org.jspecify.annotations.NullMarked;
