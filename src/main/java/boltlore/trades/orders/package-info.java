/** Which workbooks an order gets, and in which formats. */
@NullMarked
package boltlore.trades.orders;

import org.jspecify.annotations.NullMarked;
