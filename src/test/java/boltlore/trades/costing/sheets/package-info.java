/** Tests of the cost statement and the quotation. */
@NullMarked
package boltlore.trades.costing.sheets;

import org.jspecify.annotations.NullMarked;
