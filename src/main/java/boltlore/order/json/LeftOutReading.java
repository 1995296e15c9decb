package boltlore.order.json;

import boltlore.catalogue.Family;
import boltlore.catalogue.Line;
import boltlore.json.Allowed;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.Shape;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.LineName;
import boltlore.order.LeftOut;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads what becomes of unused brackets. */
final class LeftOutReading {

    private static final Allowed<LeftOut> WORDS = new Allowed<>(Collections.unmodifiableMap(new TreeMap<>(
            Map.of("undecided", new LeftOut.Undecided(), "keep", new LeftOut.Keep(), "all", new LeftOut.AllUnused()))));

    private final Faults faults;
    private final List<String> brackets;

    LeftOutReading(Family family, Faults faults) {
        this.faults = faults;
        this.brackets = family.lines()
                .filter(Line::isBracket)
                .map(line -> line.name().text())
                .toList();
    }

    /** Undecided where the order says nothing. */
    LeftOut read(ObjectReader reader) {
        return reader.find("leftOut", new Shape.Named("leftOut"))
                .map(this::read)
                .orElseGet(LeftOut.Undecided::new);
    }

    private LeftOut read(Json json) {
        if (!(json instanceof Json.Arr list)) {
            return Values.oneOf(json, WORDS, faults).orElseGet(LeftOut.Undecided::new);
        }
        SortedSet<LineName> lines = new TreeSet<>();
        Values.texts(list.items(), TextShape.NAME, faults, (name, location) -> {
            Known.check(name, location, brackets, "a bracket line of the family", faults);
            return lines.add(new LineName(name));
        });
        return new LeftOut.These(Collections.unmodifiableSortedSet(lines));
    }
}
