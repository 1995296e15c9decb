package boltlore.trades.fixings;

import boltlore.bill.Bill;
import boltlore.bill.Item;
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

    /** Positions with what is fitted there, what holds before what is held; a stage that waits for a decision has none. */
    static Map<String, Map<Position, List<Item>>> byStage(Bill bill, Bill sure, Family family) {
        Map<String, Map<Position, List<Item>>> stages = new LinkedHashMap<>();
        bill.items().forEach(item -> stages.putIfAbsent(item.stage(), new LinkedHashMap<>()));
        for (Item item : sure.items()) {
            stages.computeIfAbsent(item.stage(), none -> new LinkedHashMap<>())
                    .computeIfAbsent(item.position(), none -> new ArrayList<>())
                    .add(item);
        }
        stages.replaceAll((stage, positions) -> {
            Map<Position, List<Item>> sorted = new LinkedHashMap<>();
            of(positions.keySet(), family)
                    .forEach(position -> sorted.put(position, positions.getOrDefault(position, List.of())));
            return sorted;
        });
        return stages;
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
