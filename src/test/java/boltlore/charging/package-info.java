/** Tests of charging and export power. */
@NullMarked
package boltlore.charging;

import org.jspecify.annotations.NullMarked;
