/** Which workbooks an order gets, and in which formats. */
@NullMarked
package boltlore.sheets.orders;

import org.jspecify.annotations.NullMarked;
