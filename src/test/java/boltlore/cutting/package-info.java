/** The cutting list against published values and against its laws. */
@NullMarked
package boltlore.cutting;

import org.jspecify.annotations.NullMarked;
