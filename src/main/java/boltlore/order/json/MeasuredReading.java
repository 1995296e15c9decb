package boltlore.order.json;

import boltlore.catalogue.Family;
import boltlore.catalogue.Measure;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.Shape;
import boltlore.json.Values;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Reads the dimensions that were measured on the order's vehicle, each within what its family thinks possible. */
final class MeasuredReading {

    private final Family family;
    private final Faults faults;

    MeasuredReading(Family family, Faults faults) {
        this.family = family;
        this.faults = faults;
    }

    Map<String, BigDecimal> read(ObjectReader reader) {
        Map<String, BigDecimal> measured = new TreeMap<>();
        reader.find("measured", new Shape.Named("measured")).ifPresent(json -> {
            if (json instanceof Json.Obj object) {
                object.members().forEach((name, value) -> dimension(name, value, measured));
            } else {
                faults.add(json.location().fault(json.shown(), "an object of dimensions in mm", ""));
            }
        });
        return Collections.unmodifiableMap(measured);
    }

    private void dimension(String name, Json json, Map<String, BigDecimal> measured) {
        List<String> names = family.measures().stream().map(Measure::name).toList();
        if (Known.check(
                name, json.location(), names, "a dimension that family '" + family.name() + "' measures", faults)) {
            Measure measure = family.measures().get(names.indexOf(name));
            Values.decimal(json, new Range(measure.fromMm(), true, measure.toMm()), faults)
                    .ifPresent(mm -> measured.put(name, mm));
        }
    }
}
