/** The room that talks with customers: orders from the first question to the confirmed quotation. */
@NullMarked
package boltlore.desk.sales;

import org.jspecify.annotations.NullMarked;
