package boltlore.trades.fixings;

import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The order in which positions can be fitted as far as the catalogue tells: a bracket before what it holds, a position before
 * those that belong under it, all else as the files have it.
 */
final class FitOrder {

    private final Map<PositionName, Position> here = new LinkedHashMap<>();
    private final Map<LineName, PositionName> at = new HashMap<>();
    private final Set<PositionName> seen = new HashSet<>();
    private final List<Position> sorted = new ArrayList<>();

    private FitOrder(Collection<Position> positions, Family family) {
        positions.forEach(position -> here.put(position.name(), position));
        for (Position position : family.positions()) {
            for (Line line : position.lines()) {
                at.put(line.name(), position.name());
            }
        }
    }

    static List<Position> of(Collection<Position> positions, Family family) {
        FitOrder order = new FitOrder(positions, family);
        order.here.values().forEach(order::fit);
        return order.sorted;
    }

    /** Each once; where the files lead in a circle, the first that was asked for comes last. */
    private void fit(Position position) {
        if (!seen.add(position.name())) {
            return;
        }
        Stream.concat(
                        Stream.ofNullable(position.under()),
                        position.heldBy().stream().flatMap(List::stream).map(at::get))
                .map(here::get)
                .filter(Objects::nonNull)
                .forEach(this::fit);
        sorted.add(position);
    }
}
