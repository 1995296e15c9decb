/** Statements as clauses, checked again with solvers that know nothing of this program. */
@NullMarked
package boltlore.proof.evidence;

import org.jspecify.annotations.NullMarked;
