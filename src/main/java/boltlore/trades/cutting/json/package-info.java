/** Remnants read and written as JSON, and a cutting plan as JSON for programs. */
@NullMarked
package boltlore.trades.cutting.json;

import org.jspecify.annotations.NullMarked;
