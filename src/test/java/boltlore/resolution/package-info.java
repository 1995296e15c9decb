/** Whole resolutions of small kits. */
@NullMarked
package boltlore.resolution;

import org.jspecify.annotations.NullMarked;
