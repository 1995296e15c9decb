/** Small catalogues for tests, drawn in a few lines; everything that is not said is plain. Reads no file. */
@NullMarked
package boltlore.trial;

import org.jspecify.annotations.NullMarked;
