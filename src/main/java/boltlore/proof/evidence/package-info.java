/** Statements and their answers as clauses in the DIMACS format, for anyone to check again with any solver. */
@NullMarked
package boltlore.proof.evidence;

import org.jspecify.annotations.NullMarked;
