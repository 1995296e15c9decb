/** Tables as CSV, one file a table. Depends on the sheet model alone. */
@NullMarked
package boltlore.report.csv;

import org.jspecify.annotations.NullMarked;
