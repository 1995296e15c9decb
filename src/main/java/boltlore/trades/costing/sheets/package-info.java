/**
 * The trade that prices orders: what it finds, the cost statement of an order, for the workshop only, and its quotation for the customer, which is made of a
 * quotation that holds no cost.
 */
@NullMarked
package boltlore.trades.costing.sheets;

import org.jspecify.annotations.NullMarked;
