/** What power passes between supply, inlet, charger and outlet, and what pilot, proximity, isolation and precharge must be. */
@NullMarked
package boltlore.trades.charging;

import org.jspecify.annotations.NullMarked;
