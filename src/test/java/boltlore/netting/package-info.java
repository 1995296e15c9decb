/** Netting against published records and trees, and its laws. */
@NullMarked
package boltlore.netting;

import org.jspecify.annotations.NullMarked;
