/** The cutting list against published values and against its laws. */
@NullMarked
package boltlore.trades.cutting;

import org.jspecify.annotations.NullMarked;
