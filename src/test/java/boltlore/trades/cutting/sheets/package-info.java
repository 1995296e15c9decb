/** The cutting list as the saw gets it, read back by other readers than its writers. */
@NullMarked
package boltlore.trades.cutting.sheets;

import org.jspecify.annotations.NullMarked;
