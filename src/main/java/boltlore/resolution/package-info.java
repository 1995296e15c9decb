/** One settled order becomes one kit: lines, parts with reasons, quantities, findings. Neither disk nor clock. */
@NullMarked
package boltlore.resolution;

import org.jspecify.annotations.NullMarked;
