/** The cutting list: which bar gives which piece, drawn and in tables; blanks; remnants. Computes nothing of its own. */
@NullMarked
package boltlore.trades.cutting.sheets;

import org.jspecify.annotations.NullMarked;
