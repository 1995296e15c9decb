package boltlore.catalogue.json;

import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A position can only be held by lines that carry it. */
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
                            .add(reading.places()
                                    .of(line)
                                    .fault(
                                            "'" + line + "', which does not carry '" + position.name() + "'",
                                            carrying.isEmpty()
                                                    ? "a line that carries it; none does"
                                                    : "one of " + joined(carrying),
                                            "Add the position to that line's 'carries'.")));
        }
    }

    private static String joined(List<LineName> lines) {
        return lines.stream().map(LineName::text).collect(Collectors.joining(", "));
    }
}
