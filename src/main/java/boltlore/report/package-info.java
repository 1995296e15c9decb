/**
 * What a room gets, as values: workbooks of pages of headings, notes, particulars, tables, bar charts and signature
 * lines. Knows no file format, no library and no disk.
 */
@NullMarked
package boltlore.report;

import org.jspecify.annotations.NullMarked;
