/** Remnants read and written as JSON, and a cutting plan as JSON for programs. */
@NullMarked
package boltlore.cutting.json;

import org.jspecify.annotations.NullMarked;
