/**
 * From a full cost to what a customer is quoted: price, discount, tax, currency, validity.
 *
 * <p>One price and one set of dates: {@link boltlore.trades.costing.quote.OrderPricing} makes both, and every screen and
 * sheet shows its figures; choosing sums the same rows as conditions, exact to the cent. A quotation is made of a value
 * that holds no cost; canaries in tests prove that the search for leaks finds them. It lies in a folder of its own, because
 * a folder is what people send.
 */
@NullMarked
package boltlore.trades.costing.quote;

import org.jspecify.annotations.NullMarked;
