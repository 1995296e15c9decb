/** Tests of charging and export power. */
@NullMarked
package boltlore.trades.charging;

import org.jspecify.annotations.NullMarked;
