/** The sheets of one order, each the same report as the workbook: a page to read and to print, and files beside it. */
@NullMarked
package boltlore.desk.sheets;

import org.jspecify.annotations.NullMarked;
