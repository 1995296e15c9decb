package boltlore.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * How an inlet tells the charge controller of its cable, and what it passes on direct current.
 *
 * @param direct null where the inlet has no contacts for direct current
 */
public record InletWiring(
        Condition when, ProximityKind proximity, @Nullable DirectLimit direct) {}
