/**
 * Which bar gives which piece, how large sheet-metal blanks are before bending, and the cutting list that says so: pure
 * functions over bills, but for the files of remnants.
 */
@NullMarked
package boltlore.trades.cutting;

import org.jspecify.annotations.NullMarked;
