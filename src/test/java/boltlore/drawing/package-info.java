/** Drawings read back by other readers than their writers. */
@NullMarked
package boltlore.drawing;

import org.jspecify.annotations.NullMarked;
