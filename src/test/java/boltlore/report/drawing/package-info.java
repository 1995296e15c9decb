/** Drawings read back by other readers than their writers. */
@NullMarked
package boltlore.report.drawing;

import org.jspecify.annotations.NullMarked;
