/**
 * What a person must know, from the catalogue's check over the kit and every trade to proofs and records: one kind of
 * finding, in three severities, with its sentence in each language. Knows nothing of what finds it.
 */
@NullMarked
package boltlore.findings;

import org.jspecify.annotations.NullMarked;
