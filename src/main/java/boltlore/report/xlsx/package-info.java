/**
 * Workbooks as XLSX (ECMA-376) by Apache POI: styles, print set-up, names, tables, validation, pictures and charts are
 * POI's own; only the rows are streamed into its sheets, because its own cells take several times as long and its
 * streaming ones keep results as doubles. Nothing outside this package may use POI.
 */
@NullMarked
package boltlore.report.xlsx;

import org.jspecify.annotations.NullMarked;
