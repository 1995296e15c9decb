package boltlore.catalogue.json;

import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A position can only be held by lines that carry it, and needs each list of them said once. */
final class HoldingCheck {

    private HoldingCheck() {}

    static void check(Family family, Reading reading) {
        Map<PositionName, List<LineName>> carriers = Holding.carriers(family.positions());
        for (Position position : family.positions()) {
            List<LineName> carrying = carriers.getOrDefault(position.name(), List.of());
            position.heldBy().stream()
                    .flatMap(List::stream)
                    .filter(line -> !carrying.contains(line))
                    .filter(line -> reading.names().knows(Kind.LINE, family.name(), line.text()))
                    .forEach(line -> reading.faults()
                            .add(reading.sources()
                                    .of(line)
                                    .fault(
                                            "'" + line + "', which does not carry '" + position.name() + "'",
                                            carrying.isEmpty()
                                                    ? "a line that carries it; none does"
                                                    : "one of " + joined(carrying),
                                            "Add the position to that line's 'carries'.")));
            saidOnce(position, reading);
        }
    }

    private static void saidOnce(Position position, Reading reading) {
        Set<Set<LineName>> met = new HashSet<>();
        for (List<LineName> brackets : position.heldBy()) {
            if (!brackets.isEmpty() && !met.add(Set.copyOf(brackets))) {
                reading.faults()
                        .add(reading.sources()
                                .of(brackets.get(0))
                                .fault(
                                        "the same list of brackets again: " + joined(brackets),
                                        "each list once",
                                        "Remove one of the two, or name the brackets that are meant."));
            }
        }
    }

    private static String joined(List<LineName> lines) {
        return lines.stream().map(LineName::text).collect(Collectors.joining(", "));
    }
}
