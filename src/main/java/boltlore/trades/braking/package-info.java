/** How the converted vehicle's brakes are balanced, and how long their vacuum lasts. */
@NullMarked
package boltlore.trades.braking;

import org.jspecify.annotations.NullMarked;
