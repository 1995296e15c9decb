/** Workbooks as plain text of a given width, for a terminal and for comparing. Depends on the sheet model alone. */
@NullMarked
package boltlore.report.text;

import org.jspecify.annotations.NullMarked;
