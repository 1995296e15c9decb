package boltlore.catalogue.json;

import boltlore.catalogue.Consignor;
import boltlore.catalogue.CrateType;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Lifting;
import boltlore.catalogue.OwnCrate;
import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.UsualCrate;
import boltlore.catalogue.Wood;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.PartyReading;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import boltlore.measure.Party;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** shipping.json: who sends, what is packed in, and what is known of parts only for shipping them. */
final class ShippingFile {

    private static final Allowed<Wood> WOODS = Allowed.of(Wood.values());
    private static final Allowed<RatedMotor.Current> CURRENTS = Allowed.of(RatedMotor.Current.values());

    /** No crate that people and lorries handle weighs more than this many kg. */
    private static final Range KG = Range.above(0, 5_000);

    private static final Range MINUTES = Range.between(0, 1_440);
    private static final Range SOME_KG = Range.between(0, 5_000);
    private static final Range PERCENT = Range.above(0, 100);

    private final Reading reading;

    ShippingFile(Reading reading) {
        this.reading = reading;
    }

    Shipping read(ObjectReader reader) {
        return new Shipping(
                reader.object("consignor", ShippingFile::consignor),
                reader.findTexts("customsUnion", Shapes.COUNTRY, (country, location) -> country),
                reader.findTexts("byRoad", Shapes.COUNTRY, (country, location) -> country),
                reader.objects("crates", this::crate),
                reader.findObjects("ownCrates", this::ownCrate),
                reader.findObjects("usualCrates", this::usualCrate),
                reader.decimal("fillPercent", PERCENT),
                reader.decimal("litresPerKg", Range.above(0, 1_000)),
                reader.findObject("lifting", ShippingFile::lifting).orElse(Lifting.USUAL),
                sizes(reader),
                Keyed.by(reader.findObjects("motors", this::motor), RatedMotor::part),
                Keyed.by(reader.findObjects("batteries", this::battery), ShippedBattery::part));
    }

    private static Consignor consignor(ObjectReader reader) {
        Party at = PartyReading.nameless(reader);
        if (reader.sound() && at.phone().isEmpty()) {
            reader.fault("no 'phone'", "a number at which somebody answers while goods are under way", "Add it.");
        }
        return new Consignor(at, reader.findText("adviser", TextShape.LINE).orElse(""));
    }

    private CrateType crate(ObjectReader reader) {
        CrateType crate = new CrateType(
                reading.named(reader, "crate", Kind.CRATE),
                reading.wording(reader, "says"),
                reader.object("insideMm", CoatingFile::sizeMm),
                reader.object("outsideMm", CoatingFile::sizeMm),
                reader.decimal("tareKg", KG),
                reader.decimal("packingKg", SOME_KG),
                reader.decimal("maxGrossKg", KG),
                reader.oneOf("wood", WOODS),
                reader.findText("woodMark", TextShape.LINE).orElse(""),
                reader.findText("unMark", TextShape.LINE).orElse(""),
                reader.truth("onlyDangerous", false),
                reader.truth("stackable", false),
                orNone(reader, "cost", Range.NOT_NEGATIVE),
                orNone(reader, "packMin", MINUTES));
        crateRules(crate, reader);
        return crate;
    }

    private static BigDecimal orNone(ObjectReader reader, String key, Range range) {
        BigDecimal found = reader.findDecimal(key, range);
        return found == null ? BigDecimal.ZERO : found;
    }

    private UsualCrate usualCrate(ObjectReader reader) {
        if (!reader.has("stage") && !reader.has("ownCrate")) {
            reader.fault("neither 'stage' nor 'ownCrate'", "what lies in it, by 'stage', 'ownCrate' or both", "");
        }
        String stage = reading.findMentioned(reader, "stage", Kind.STAGE);
        String bag = reading.findMentioned(reader, "ownCrate", Kind.OWN_CRATE);
        return new UsualCrate(
                stage == null ? "" : stage,
                bag == null ? "" : bag,
                reading.mentioned(reader, "crate", Kind.CRATE),
                reader.whole("count", 1, 50));
    }

    private OwnCrate ownCrate(ObjectReader reader) {
        OwnCrate own = new OwnCrate(
                reading.named(reader, "bag", Kind.OWN_CRATE),
                reading.wording(reader, "says"),
                reader.truth("together", false));
        return reading.sources().put(own, reader.spot("bag"));
    }

    private static Lifting lifting(ObjectReader reader) {
        Lifting lifting = new Lifting(reader.decimal("onePersonKg", KG), reader.decimal("twoPersonsKg", KG));
        if (reader.sound() && lifting.twoPersonsKg().compareTo(lifting.onePersonKg()) < 0) {
            reader.faultAt(
                    "twoPersonsKg",
                    "less than one person lifts",
                    "at least " + lifting.onePersonKg().toPlainString() + " kg",
                    "Check both.");
        }
        return lifting;
    }

    private Map<PartNumber, EnvelopeMm> sizes(ObjectReader reader) {
        Map<PartNumber, EnvelopeMm> sizes = new LinkedHashMap<>();
        reader.findObjects(
                "sizes", each -> sizes.put(part(each, Kind.SIZED_PART), each.object("sizeMm", CoatingFile::sizeMm)));
        return Collections.unmodifiableMap(sizes);
    }

    private RatedMotor motor(ObjectReader reader) {
        return new RatedMotor(
                part(reader, Kind.RATED_MOTOR),
                reader.decimal("kw", Range.above(0, 10_000)),
                reader.oneOf("current", CURRENTS));
    }

    private ShippedBattery battery(ObjectReader reader) {
        return new ShippedBattery(
                part(reader, Kind.SHIPPED_BATTERY),
                reader.truth("strongCase", false),
                reader.truth("smallRun", false),
                reader.findText("testSummary", TextShape.LINE).orElse(""),
                reader.findDecimal("chargePercent", Range.between(0, 100)));
    }

    /** A part that is told once at most. */
    private PartNumber part(ObjectReader reader, Kind once) {
        return new PartNumber(reading.namedOnce(reader, "part", once, Kind.PART));
    }

    /** What must hold within a kind of crate. */
    private static void crateRules(CrateType crate, ObjectReader reader) {
        if (reader.sound()) {
            sides(crate, reader);
            masses(crate, reader);
            if (crate.wood() == Wood.NONE && !crate.woodMark().isEmpty()) {
                reader.faultAt("woodMark", "a mark of treated wood", "none on what is not of wood", "Remove it.");
            }
        }
    }

    private static void sides(CrateType crate, ObjectReader reader) {
        if (!holds(crate.outside(), crate.inside())) {
            reader.faultAt("outsideMm", "smaller than its inside", "no side shorter than inside", "Check both.");
        }
    }

    private static void masses(CrateType crate, ObjectReader reader) {
        if (crate.payloadKg().signum() <= 0) {
            String own = crate.tareKg().add(crate.packingKg()).toPlainString();
            String found = crate.mostGrossKg().toPlainString() + " kg, which leaves nothing for parts";
            String expected = "more than the " + own + " kg of crate and packing";
            reader.faultAt("maxGrossKg", found, expected, "Check the three masses.");
        }
    }

    private static boolean holds(EnvelopeMm outside, EnvelopeMm inside) {
        return outside.length() >= inside.length()
                && outside.width() >= inside.width()
                && outside.height() >= inside.height();
    }
}
