/** One file for each kind of statement: its name, weight, formulas, words, and how to mend what it finds. */
@NullMarked
package boltlore.proof.kinds;

import org.jspecify.annotations.NullMarked;
