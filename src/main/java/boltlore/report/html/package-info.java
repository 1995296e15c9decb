/** Reports as pages for a browser and its printer: one file each, nothing fetched, no script. */
@NullMarked
package boltlore.report.html;

import org.jspecify.annotations.NullMarked;
