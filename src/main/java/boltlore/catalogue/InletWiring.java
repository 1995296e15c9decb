package boltlore.catalogue;

import boltlore.measure.PositionName;
import org.jspecify.annotations.Nullable;

/**
 * How an inlet tells the charge controller of its cable, and what it passes on direct current.
 *
 * @param direct null where the inlet has no contacts for direct current
 * @param sharedPins whether direct and alternating current use the same contacts, so that the charger must be isolated
 *     from them while direct current flows
 * @param isolatedBy the position of the contactors that do so, or null
 */
public record InletWiring(
        Condition when,
        ProximityKind proximity,
        @Nullable DirectLimit direct,
        boolean sharedPins,
        @Nullable PositionName isolatedBy) {}
