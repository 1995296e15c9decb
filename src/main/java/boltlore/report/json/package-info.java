/** Workbooks as JSON for machines. Depends on the sheet model alone. */
@NullMarked
package boltlore.report.json;

import org.jspecify.annotations.NullMarked;
