/** Tests of the cost statement and the quotation. */
@NullMarked
package boltlore.sheets.pricing;

import org.jspecify.annotations.NullMarked;
