/**
 * What a person must know, from the catalogue's check over the kit and every trade to proofs and records: one kind of
 * finding, in three severities, with its sentence in each language. Knows nothing of what finds it.
 *
 * <p>One of severity Check counts as a defect until it is accepted in {@code family.json} by its name, or waived in the
 * order; a Stop is never waived.
 */
@NullMarked
package boltlore.findings;

import org.jspecify.annotations.NullMarked;
