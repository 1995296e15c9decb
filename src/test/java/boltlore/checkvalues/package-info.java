/** Reads tables of published check values, so that a test names row and source beside its result. */
@NullMarked
package boltlore.checkvalues;

import org.jspecify.annotations.NullMarked;
