/**
 * Packing of lengths into bars of several lengths and costs: good packings, and bounds that no packing can be under.
 * Knows numbers only: no part, no material, no order.
 */
@NullMarked
package boltlore.trades.cutting.packing;

import org.jspecify.annotations.NullMarked;
