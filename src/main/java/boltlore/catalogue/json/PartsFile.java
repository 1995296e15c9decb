package boltlore.catalogue.json;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Hand;
import boltlore.catalogue.Handed;
import boltlore.catalogue.Offer;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Service;
import boltlore.catalogue.Source;
import boltlore.catalogue.Tracked;
import boltlore.catalogue.Transport;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** parts/*.json: the part master. */
final class PartsFile {
    private static final KeyRule ONE_COST = new KeyRule.OneWay("cost", "offers", "inspect");
    private static final KeyRule MASS_OF_A_LEAF = new KeyRule.OneWay("contains", "massKg", "inspect");

    private static final List<String> OF_ASSEMBLIES = List.of("weighedKg", "joined", "stocked");

    /** Units in which fractions make no sense. */
    static final List<String> WHOLE_UNITS = List.of("each", "set");

    static final Allowed<String> UNITS = Allowed.of("each", "set", "m", "l", "kg");
    static final Allowed<Source> SOURCES = Allowed.of(Source.values());
    static final Allowed<Tracked> TRACKED = Allowed.of(Tracked.values());
    private static final Allowed<Hand> HANDS = Allowed.of(Hand.values());

    private static final KeyRule HAND_OF_A_PAIR = new KeyRule.Needs("pair", "hand");
    private static final KeyRule PAIR_OF_A_HAND = new KeyRule.Needs("hand", "pair");

    static final int LONGEST_MM = 1_000_000;

    private static final KeyRule SOME_INTERVAL = new KeyRule.OneWay("everyMonths", "everyKm", "everyMonths everyKm");

    private final Reading reading;
    private final NeedReading needs;
    private final CoatReading coats;
    private final MakingReading making;
    private final UpkeepReading upkeep;
    private final OfferReading offers;

    PartsFile(Reading reading, OfferReading.Money money) {
        this.reading = reading;
        this.needs = new NeedReading(reading, null);
        this.coats = new CoatReading(reading);
        this.making = new MakingReading(reading);
        this.upkeep = new UpkeepReading(reading);
        this.offers = new OfferReading(reading, money);
    }

    List<Part> read(ObjectReader reader) {
        return reader.objects("parts", this::part);
    }

    private Part part(ObjectReader reader) {
        List<Offer> offered = offers.read(reader);
        Part part = new Part(
                new PartNumber(reading.named(reader, "part", Kind.PART)),
                reader.text("revision", TextShape.LINE),
                reading.wording(reader, "name"),
                unit(reader),
                reader.oneOf("source", SOURCES),
                cost(reader, offered),
                scrap(reader),
                massKg(reader),
                leadDays(reader, offered),
                bin(reader),
                reader.findOneOf("tracked", TRACKED),
                buying(reader, offered),
                making.structure(reader),
                making.making(reader),
                needs.needs(reader),
                reader.findObject("coat", coats::coat).orElse(null),
                reader.findWhole("lengthMm", 1, LONGEST_MM),
                reader.findObject("fixing", MakingReading::fixing).orElse(null),
                reader.findObjects("holes", MakingReading::hole),
                handed(reader),
                reader.findObjects("ports", this::port),
                reading.findAllMentioned(reader, "cautions", Kind.CAUTION),
                HouseFile.traits(reading, reader),
                reader.findObject("customs", PartsFile::customs).orElse(null),
                reader.findObject("transport", PartsFile::transport).orElse(null),
                reader.findObject("service", this::service).orElse(null),
                FitReading.geometry(reading, reader),
                upkeep.read(reader));
        partRules(part, reader);
        return reading.sources().put(part, reader.spot());
    }

    /** Empty where it is missing or unknown, so that quantities are not measured by a guess. */
    private static String unit(ObjectReader reader) {
        return reader.oneOf("unit", UNITS, "");
    }

    private static BigDecimal scrap(ObjectReader reader) {
        BigDecimal scrap = reader.findDecimal("scrapPercent", Range.between(0, 99));
        return scrap == null ? BigDecimal.ZERO : scrap;
    }

    /** What is weighed with the base vehicle adds nothing. */
    private static @Nullable BigDecimal massKg(ObjectReader reader) {
        BigDecimal massKg = reader.findDecimal("massKg", Range.NOT_NEGATIVE);
        return reader.has("inspect") ? BigDecimal.ZERO : massKg;
    }

    private static int leadDays(ObjectReader reader, List<Offer> offered) {
        Integer days = reader.findWhole("leadDays", 0, 3650);
        if (!offered.isEmpty()) {
            return offered.get(0).leadDays();
        }
        return days == null ? 0 : days;
    }

    private String bin(ObjectReader reader) {
        String bin = reader.findText("bin", Shapes.BIN).orElse("");
        if (!bin.isEmpty()) {
            reading.mention(Kind.AISLE, bin.substring(0, bin.indexOf('-')), reader.spot("bin"));
        }
        return bin;
    }

    /** Of one supplier, or of the preferred one at its smallest quantity. */
    private static BigDecimal cost(ObjectReader reader, List<Offer> offered) {
        BigDecimal cost = reader.findDecimal("cost", Range.NOT_NEGATIVE);
        boolean ofTheVehicle = reader.has("inspect");
        if (reader.breaks(ONE_COST) && !ofTheVehicle) {
            reader.fault(
                    reader.has("cost") ? "'cost' and 'offers'" : "neither 'cost' nor 'offers'",
                    "either 'cost', or 'offers' of suppliers with theirs",
                    reader.has("cost") ? "Remove 'cost': the offers tell it." : "Add one of them.");
        }
        if (cost != null || ofTheVehicle) {
            return ofTheVehicle || cost == null ? BigDecimal.ZERO : cost;
        }
        return offered.isEmpty()
                ? BigDecimal.ONE
                : offered.get(0).breaks().get(0).homeCost();
    }

    private @Nullable Buying buying(ObjectReader reader, List<Offer> offered) {
        String supplier = reading.findMentioned(reader, "supplier", Kind.SUPPLIER);
        String orderCode = reader.findText("orderCode", TextShape.LINE).orElse("");
        BigDecimal packOf = reader.findDecimal("packOf", Range.POSITIVE);
        BigDecimal minimum = reader.findDecimal("minimumOrder", Range.POSITIVE);
        for (String key : OfferReading.OF_ONE_SUPPLIER) {
            if (reader.breaks(new KeyRule.Apart("offers", key))) {
                reader.faultAt(key, "'" + key + "' beside 'offers'", "it inside an offer", "Move it there.");
            }
        }
        if (!offered.isEmpty()) {
            return Buying.of(offered);
        }
        boolean nothing = supplier == null && orderCode.isEmpty() && packOf == null && minimum == null;
        return nothing ? null : new Buying(supplier == null ? "" : supplier, orderCode, packOf, minimum);
    }

    private static @Nullable Handed handed(ObjectReader reader) {
        String pair = reader.findText("pair", TextShape.NAME).orElse("");
        Hand hand = reader.findOneOf("hand", HANDS);
        if (reader.breaks(HAND_OF_A_PAIR) || reader.breaks(PAIR_OF_A_HAND)) {
            String there = reader.has("pair") ? "pair" : "hand";
            reader.faultAt(there, "'" + there + "' alone", "'pair' and 'hand' together", "Add the other one.");
        }
        return hand == null || pair.isEmpty() ? null : new Handed(pair, hand);
    }

    private Port port(ObjectReader reader) {
        String name = reader.text("port", TextShape.NAME);
        String kind = reader.findText("kind", TextShape.NAME).orElse("");
        List<PartNumber> mates = reader.findTexts("mates", TextShape.PART_NUMBER, (part, location) -> {
            reading.mention(Kind.PART, part, location);
            return new PartNumber(part);
        });
        String blank = reading.findMentioned(reader, "blank", Kind.PART);
        return new Port(
                name,
                kind,
                mates,
                blank == null ? null : new PartNumber(blank),
                FitReading.joint(reader),
                reader.findText("shares", TextShape.NAME).orElse(""),
                reader.findObject("bolted", FitReading::bolted).orElse(null));
    }

    private static Customs customs(ObjectReader reader) {
        return new Customs(reader.text("hs", Shapes.HS_CODE), reader.text("origin", Shapes.COUNTRY));
    }

    private static Transport transport(ObjectReader reader) {
        return new Transport(
                reader.text("un", TextShape.UN_NUMBER),
                reader.findText("class", TextShape.LINE).orElse(null),
                reader.findDecimal("wattHours", Range.POSITIVE));
    }

    private Service service(ObjectReader reader) {
        Service service = new Service(
                reader.findWhole("everyMonths", 1, 600),
                reader.findWhole("everyKm", 1, 1_000_000),
                reading.wording(reader, "why"));
        if (reader.breaks(SOME_INTERVAL)) {
            reader.fault(
                    "neither 'everyMonths' nor 'everyKm'",
                    "after how many months or km it is replaced",
                    "Add one of them, or both.");
        }
        return service;
    }

    /** What the keys of one part demand of one another. */
    private static void partRules(Part part, ObjectReader reader) {
        if (reader.has("offers") && part.source() == Source.MAKE && reader.has("source")) {
            reader.faultAt(
                    "offers", "offers of a part that is made", "offers of bought parts", "Remove them, or buy it.");
        }
        boolean masses = reader.breaks(MASS_OF_A_LEAF);
        if (reader.has("contains")) {
            assembly(part, reader, masses);
        } else if (masses && !reader.has("inspect")) {
            reader.fault(
                    "no 'massKg'", "the mass in kg of one of its unit", "Add it: masses of assemblies add up from it.");
        }
        for (String key : OF_ASSEMBLIES) {
            if (reader.breaks(new KeyRule.Needs(key, "contains"))) {
                reader.faultAt(
                        key, "'" + key + "' on a part without 'contains'", "'" + key + "' on assemblies only", "");
            }
        }
        once(part, reader);
    }

    private static void once(Part part, ObjectReader reader) {
        Set<PartNumber> children = new HashSet<>();
        part.contains().stream()
                .filter(child -> !child.part().text().isEmpty() && !children.add(child.part()))
                .forEach(child -> reader.faultAt(
                        "contains",
                        "'" + child.part() + "' a second time",
                        "each child once",
                        "Add the quantities up."));
        Set<String> ports = new HashSet<>();
        part.ports().stream()
                .filter(port -> !port.name().isEmpty() && !ports.add(port.name()))
                .forEach(port -> reader.faultAt(
                        "ports", "'" + port.name() + "' a second time", "each port once", "Rename one of the two."));
    }

    private static void assembly(Part part, ObjectReader reader, boolean hasMass) {
        if (hasMass) {
            reader.faultAt(
                    "massKg",
                    "a mass on an assembly",
                    "masses on its leaves, which add up",
                    "Move a mass read on a scale to 'weighedKg'.");
        }
        if (part.structure().stocked() && !reader.has("bin")) {
            reader.fault("a stocked assembly without 'bin'", "the bin where it is picked", "Add 'bin'.");
        }
        if (part.source() == Source.BUY && !part.structure().stocked() && reader.has("source")) {
            reader.fault(
                    "a bought assembly that is not stocked",
                    "\"stocked\": true, because it arrives and is picked in one piece",
                    "Add it, or make the assembly in the workshop.");
        }
    }
}
