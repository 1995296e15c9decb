/** Tests of the bill's sheets and of the contents list, on demo orders. */
@NullMarked
package boltlore.trades.bill.sheets;

import org.jspecify.annotations.NullMarked;
