/** What power passes between supply, inlet, charger and outlet, and what pilot, proximity, isolation and precharge must be. */
@NullMarked
package boltlore.charging;

import org.jspecify.annotations.NullMarked;
