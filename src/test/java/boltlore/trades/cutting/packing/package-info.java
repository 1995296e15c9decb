/** Packing against open data with proven optima, against trying all ways, and against its laws. */
@NullMarked
package boltlore.trades.cutting.packing;

import org.jspecify.annotations.NullMarked;
