/** Few orders that together show every combination of two or three values which any valid order can have. */
@NullMarked
package boltlore.proof.sample;

import org.jspecify.annotations.NullMarked;
