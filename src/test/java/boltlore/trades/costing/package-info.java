/** Tests of costs, prices, lead times, what is to buy and what is to make. */
@NullMarked
package boltlore.trades.costing;

import org.jspecify.annotations.NullMarked;
