/** Workbooks as JSON for machines. Depends on the sheet model alone. */
@NullMarked
package boltlore.sheets.json;

import org.jspecify.annotations.NullMarked;
