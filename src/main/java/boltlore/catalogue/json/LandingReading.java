package boltlore.catalogue.json;

import boltlore.catalogue.Delivery;
import boltlore.catalogue.Duty;
import boltlore.catalogue.Landing;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What it costs to bring bought goods into the country and the stores. */
final class LandingReading {

    private static final Range PERCENT = Range.between(0, 1000);
    private static final int MOST_KITS = 10_000;

    private final Reading reading;

    LandingReading(Reading reading) {
        this.reading = reading;
    }

    Landing read(ObjectReader reader) {
        String country = reader.text("country", Shapes.COUNTRY);
        Set<String> free = new TreeSet<>(reader.findTexts("dutyFree", Shapes.COUNTRY, (origin, location) -> origin));
        free.add(country);
        List<Duty> duties = reader.findObjects("duties", this::duty);
        return new Landing(
                country,
                free,
                reader.truth("dutyOnFreight", true),
                duties,
                Keyed.by(reader.findObjects("suppliers", this::delivery), Delivery::supplier));
    }

    private Duty duty(ObjectReader reader) {
        Duty duty = new Duty(
                reader.text("hs", Shapes.HS_BEGINNING),
                reader.findText("origin", Shapes.COUNTRY).orElse(""),
                reader.decimal("percent", PERCENT),
                reader.text("source"));
        return reading.sources().put(duty, reader.spot("hs"));
    }

    private Delivery delivery(ObjectReader reader) {
        String supplier = reading.namedOnce(reader, "supplier", Kind.DELIVERY, Kind.SUPPLIER);
        BigDecimal perKg = reader.findDecimal("perKg", Range.NOT_NEGATIVE);
        BigDecimal percent = reader.findDecimal("percent", PERCENT);
        reader.oneWay("perKg", "percent");
        BigDecimal clearance = reader.findDecimal("clearance", Range.NOT_NEGATIVE);
        Integer kits = reader.findWhole("kits", 1, MOST_KITS);
        return new Delivery(
                supplier, perKg, percent, clearance == null ? BigDecimal.ZERO : clearance, kits == null ? 1 : kits);
    }
}
