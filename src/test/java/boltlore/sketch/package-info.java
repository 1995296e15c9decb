/** Small parts, families and workshops made in a few words, so that a test shows only what it is about. */
@NullMarked
package boltlore.sketch;

import org.jspecify.annotations.NullMarked;
