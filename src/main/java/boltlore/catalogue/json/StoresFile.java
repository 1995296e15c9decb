package boltlore.catalogue.json;

import boltlore.catalogue.Stores;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/** stores.json: where the aisles lie, and which parts are kept in stock. */
final class StoresFile {

    private static final int LONGEST_MM = 1_000_000;
    private static final int LONGEST_DAYS = 3_650;

    private final Reading reading;

    StoresFile(Reading reading) {
        this.reading = reading;
    }

    Stores read(ObjectReader reader) {
        Integer cover = reader.findWhole("coverDays", 1, LONGEST_DAYS);
        return new Stores(
                reader.findObject("layout", this::layout).orElse(null),
                cover == null ? 1 : cover,
                Keyed.by(reader.findObjects("kept", this::kept), Stores.Kept::part),
                leastOrders(reader));
    }

    private Map<String, BigDecimal> leastOrders(ObjectReader reader) {
        Map<String, BigDecimal> least = new LinkedHashMap<>();
        reader.findObjects(
                "leastOrders",
                each -> least.put(
                        reading.namedOnce(each, "supplier", Kind.LEAST_ORDER, Kind.SUPPLIER),
                        each.decimal("value", Range.POSITIVE)));
        return Collections.unmodifiableMap(least);
    }

    private Stores.Kept kept(ObjectReader reader) {
        BigDecimal safety = reader.findDecimal("safetyStock", Range.POSITIVE);
        Integer cover = reader.findWhole("coverDays", 1, LONGEST_DAYS);
        if (reader.sound() && safety == null && cover == null) {
            reader.fault(
                    "neither 'safetyStock' nor 'coverDays'",
                    "one of them, or both",
                    "Remove it, or say how it is kept.");
        }
        return new Stores.Kept(
                new PartNumber(reading.namedOnce(reader, "part", Kind.KEPT_PART, Kind.PART)),
                safety == null ? BigDecimal.ZERO : safety,
                cover);
    }

    private Stores.Layout layout(ObjectReader reader) {
        Map<String, Stores.Aisle> aisles = new LinkedHashMap<>();
        Map<Long, String> places = new HashMap<>();
        reader.objects("aisles", each -> {
            String name = reading.namedOnce(each, "aisle", Kind.LAID_OUT_AISLE, Kind.AISLE);
            Stores.Aisle aisle = new Stores.Aisle(
                    each.whole("atMm", 0, LONGEST_MM),
                    each.whole("firstBayMm", 0, LONGEST_MM),
                    each.whole("bayMm", 1, LONGEST_MM));
            String other = places.putIfAbsent(aisle.atMm(), name);
            if (each.sound() && other != null) {
                each.faultAt("atMm", "the place of aisle " + other, "a place of its own", "Measure both.");
            }
            return aisles.put(name, aisle);
        });
        return new Stores.Layout(
                reader.whole("aisleLengthMm", 1, LONGEST_MM),
                reader.whole("startMm", 0, LONGEST_MM),
                Collections.unmodifiableMap(aisles));
    }
}
