package boltlore.order.json;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Part;
import boltlore.catalogue.PieceCounts;
import boltlore.catalogue.Station;
import boltlore.catalogue.Upkeep;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what an order asks for outside the universal kit. */
final class ExtraReading {

    private static final Allowed<String> UNITS = Allowed.of("each", "set", "m", "l", "kg");
    private static final List<String> WHOLE_UNITS = List.of("each", "set");
    private static final Allowed<Boolean> BY_CUSTOMER =
            Allowed.of(new Boolean[] {false, true}, customer -> customer ? "customer" : "us");

    private static final KeyRule PART_OR_ONE_OFF = new KeyRule.OneWay("part", "says");
    private static final KeyRule HEIGHT_AT_A_STATION = new KeyRule.Needs("heightMm", "stationMm");
    private static final Range KG = Range.above(0, 5000);
    private static final int FAR_MM = 20_000;
    private static final int HIGHEST_MM = 4_000;

    private final Catalogue catalogue;
    private final Family family;
    private final @Nullable LocalDate placed;
    private final ExtraFinish finishes;

    /** @param placed date of the order, by which a part may still be current; null where it does not say */
    ExtraReading(Catalogue catalogue, Family family, @Nullable LocalDate placed) {
        this.placed = placed;
        this.catalogue = catalogue;
        this.family = family;
        this.finishes = new ExtraFinish(catalogue, family);
    }

    Extra extra(ObjectReader reader) {
        if (reader.breaks(PART_OR_ONE_OFF)) {
            String found = reader.has("part") ? "'part' and 'says'" : "neither 'part' nor 'says'";
            reader.fault(found, "either a 'part' or a one-off that 'says' what it is", "");
        }
        Part part = part(reader);
        Extra extra = new Extra(
                part == null ? null : part.number(),
                reader.findText("says", TextShape.LINE).orElse(""),
                reader.decimal("quantity", Range.QUANTITY),
                unit(reader, part),
                reader.findDecimal("cost", Range.NOT_NEGATIVE),
                reader.findDecimal("price", Range.NOT_NEGATIVE),
                reader.oneOf("suppliedBy", BY_CUSTOMER),
                reader.text("reason"),
                finishes.read(reader, part),
                reader.findDecimal("massKg", KG),
                station(reader),
                reader.findObject("goods", GoodsReading::goods).orElse(null));
        if (reader.sound()) {
            check(extra, reader);
        }
        return extra;
    }

    private @Nullable Part part(ObjectReader reader) {
        String number = reader.findText("part", TextShape.PART_NUMBER).orElse("");
        if (number.isEmpty()) {
            return null;
        }
        List<String> known =
                catalogue.parts().keySet().stream().map(PartNumber::text).toList();
        boolean isKnown = Known.check(number, reader.spot("part"), known, "a part of the catalogue", reader.faults());
        Part part = isKnown ? catalogue.part(new PartNumber(number)) : null;
        if (part != null) {
            deliverable(part, reader);
        }
        return part;
    }

    /** A superseded part goes out only where it is kept as a spare. */
    private void deliverable(Part part, ObjectReader reader) {
        if (part.reused()) {
            reader.faultAt(
                    "part", "'" + part.number() + "', which is the base vehicle's own", "a part that is supplied", "");
        }
        Upkeep.Successor successor = part.upkeep().replacedBy();
        if (successor != null && !successor.serviceOnly() && !stillCurrent(successor)) {
            reader.faultAt(
                    "part",
                    "'" + part.number() + "', which is superseded and no longer kept as a spare",
                    "a part that may be delivered",
                    "Its successor is '" + catalogue.current(part.number()) + "'.");
        }
    }

    /** An order placed before its successor takes over gets the old part. */
    private boolean stillCurrent(Upkeep.Successor successor) {
        LocalDate from = successor.since().from();
        return placed != null && from != null && placed.isBefore(from);
    }

    private static String unit(ObjectReader reader, @Nullable Part part) {
        String written = reader.findOneOf("unit", UNITS);
        if (part == null) {
            return written == null ? "each" : written;
        }
        if (written != null && !written.equals(part.unit())) {
            String expected = "'" + part.unit() + "', the part's own unit";
            reader.faultAt("unit", "'" + written + "'", expected, "Leave it out for a part.");
        }
        return part.unit();
    }

    private static @Nullable Station station(ObjectReader reader) {
        Integer behindFrontMm = reader.findWhole("stationMm", -FAR_MM, FAR_MM);
        Integer heightMm = reader.findWhole("heightMm", 0, HIGHEST_MM);
        if (reader.breaks(HEIGHT_AT_A_STATION)) {
            reader.faultAt("heightMm", "'heightMm' without 'stationMm'", "both, or 'stationMm' alone", "");
        }
        return behindFrontMm == null ? null : new Station(behindFrontMm, heightMm);
    }

    private void check(Extra extra, ObjectReader reader) {
        BigDecimal quantity = extra.quantity();
        if (WHOLE_UNITS.contains(extra.unit()) && !Values.isWhole(quantity)) {
            reader.faultAt(
                    "quantity", quantity.toPlainString(), "a whole number, counted in '" + extra.unit() + "'", "");
        }
        if (extra.part() != null && new PieceCounts(catalogue.parts(), family).tooMany(extra.part(), quantity)) {
            reader.faultAt(
                    "quantity",
                    quantity.toPlainString() + " of " + extra.part() + " with all that comes with them",
                    "at most " + PieceCounts.MOST + " pieces by one extra",
                    "Check the quantity, or order them apart.");
        }
        costed(extra, reader);
        weighed(extra, reader);
        GoodsReading.check(extra, reader);
    }

    private static void weighed(Extra extra, ObjectReader reader) {
        if (extra.part() != null && extra.massKg() != null) {
            reader.faultAt("massKg", "'massKg' for a part", "only for a one-off: a part has its own", "Leave it out.");
        }
    }

    private static void costed(Extra extra, ObjectReader reader) {
        if (extra.part() == null && !extra.suppliedByCustomer() && extra.cost() == null) {
            reader.fault(
                    "a one-off of ours without 'cost'",
                    "what one of it costs us",
                    "Add 'cost', \"0\" where it is free.");
        }
    }
}
