/** From a full cost to what a customer is quoted: price, discount, tax, currency, validity. */
@NullMarked
package boltlore.trades.costing.quote;

import org.jspecify.annotations.NullMarked;
