/**
 * Workbooks as XLSX (ECMA-376). Apache POI makes the package with its parts, relations, content types and properties;
 * the parts' XML is written here as text, because POI's own row writing starts three times as slowly. Nothing outside
 * this package may use POI.
 */
@NullMarked
package boltlore.report.xlsx;

import org.jspecify.annotations.NullMarked;
