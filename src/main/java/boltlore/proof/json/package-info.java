/** Proofs as JSON, for programs. Reads nothing back. */
@NullMarked
package boltlore.proof.json;

import org.jspecify.annotations.NullMarked;
