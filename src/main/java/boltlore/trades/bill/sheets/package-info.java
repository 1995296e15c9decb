/**
 * What stands on the bill of one order: the order at a glance, its findings, the costed bill, what is to buy and to make, and the
 * contents list, which knows no cost. Knows no file format.
 */
@NullMarked
package boltlore.trades.bill.sheets;

import org.jspecify.annotations.NullMarked;
