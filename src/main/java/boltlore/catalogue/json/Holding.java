package boltlore.catalogue.json;

import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which bracket lines hold a position that does not say so itself: all that carry it. */
final class Holding {

    private final Reading reading;

    Holding(Reading reading) {
        this.reading = reading;
    }

    List<Position> complete(List<Position> positions) {
        Map<PositionName, List<LineName>> carriers = carriers(positions);
        return positions.stream().map(position -> complete(position, carriers)).toList();
    }

    static Map<PositionName, List<LineName>> carriers(List<Position> positions) {
        Map<PositionName, List<LineName>> carriers = new HashMap<>();
        for (Position position : positions) {
            for (Line line : position.lines()) {
                line.carries()
                        .forEach(carried -> carriers.computeIfAbsent(carried, any -> new ArrayList<>())
                                .add(line.name()));
            }
        }
        return carriers;
    }

    private Position complete(Position written, Map<PositionName, List<LineName>> carriers) {
        List<LineName> lines = carriers.get(written.name());
        if (!written.heldBy().isEmpty() || lines == null) {
            return written;
        }
        Position held = new Position(
                written.name(),
                written.says(),
                written.subSystem(),
                written.stage(),
                written.bag(),
                written.under(),
                written.fill(),
                written.due(),
                List.of(List.copyOf(lines)),
                written.routes(),
                written.lines(),
                written.documents());
        return reading.sources().put(held, reading.sources().of(written));
    }
}
