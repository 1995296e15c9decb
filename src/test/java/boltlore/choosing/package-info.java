/** Proves what choosing says: by definition, by plain enumeration, and by an independent solver. */
@NullMarked
package boltlore.choosing;

import org.jspecify.annotations.NullMarked;
