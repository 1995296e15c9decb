/**
 * What to cut from which bar, and how large sheet-metal blanks are before bending: pure functions over bills. Knows no
 * sheet and no drawing.
 */
@NullMarked
package boltlore.trades.cutting;

import org.jspecify.annotations.NullMarked;
