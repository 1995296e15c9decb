/**
 * The cost statement of an order, for the workshop only, and its quotation for the customer, which is made of a
 * quotation that holds no cost.
 */
@NullMarked
package boltlore.sheets.pricing;

import org.jspecify.annotations.NullMarked;
