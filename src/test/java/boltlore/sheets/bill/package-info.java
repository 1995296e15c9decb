/** Tests of the bill's sheets and of the contents list, on demo orders. */
@NullMarked
package boltlore.sheets.bill;

import org.jspecify.annotations.NullMarked;
