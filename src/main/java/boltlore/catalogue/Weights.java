package boltlore.catalogue;

import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What comes off a family's donor vehicle, who sits where, and where the kit's positions sit.
 *
 * @param concentrates liquids of the kit that are mixed with water in the vehicle, with their share in per cent: by
 *     volume where they are counted in litres, by mass where in kilograms
 * @param subSystems station of all positions of a sub-system that have none of their own
 */
public record Weights(
        List<Removed> removed,
        List<Aboard> aboard,
        Map<PositionName, Station> positions,
        Map<String, Station> subSystems,
        Map<PartNumber, BigDecimal> concentrates) {

    /** Whose liquids go in as they are. */
    public Weights(
            List<Removed> removed,
            List<Aboard> aboard,
            Map<PositionName, Station> positions,
            Map<String, Station> subSystems) {
        this(removed, aboard, positions, subSystems, Map.of());
    }

    /** Of a family that says nothing about weights. */
    public static final Weights NONE = new Weights(List.of(), List.of(), Map.of(), Map.of());

    /** Whether the position's station is its own and not its sub-system's. */
    public boolean measured(Position position) {
        return positions.containsKey(position.name());
    }

    public @Nullable Station of(Position position) {
        Station own = positions.get(position.name());
        return own == null ? subSystems.get(position.subSystem()) : own;
    }
}
