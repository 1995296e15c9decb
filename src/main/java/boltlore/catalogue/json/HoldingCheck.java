package boltlore.catalogue.json;

import boltlore.catalogue.Family;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.Map;

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
                                                    : "one of " + carrying,
                                            "Add the position to that line's 'carries'.")));
        }
    }
}
