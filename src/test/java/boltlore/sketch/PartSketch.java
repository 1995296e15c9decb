package boltlore.sketch;

import boltlore.catalogue.Buying;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Document;
import boltlore.catalogue.Drawing;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.Fixing;
import boltlore.catalogue.Geometry;
import boltlore.catalogue.Hole;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Making;
import boltlore.catalogue.Need;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.Port;
import boltlore.catalogue.Service;
import boltlore.catalogue.Source;
import boltlore.catalogue.Structure;
import boltlore.catalogue.Tracked;
import boltlore.catalogue.Traits;
import boltlore.catalogue.Transport;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A part in the making: sound in itself until a test says otherwise. */
public final class PartSketch {

    private final PartNumber number;
    private final Source source;
    private final Map<String, String> names = new TreeMap<>();
    private final List<Contained> contains = new ArrayList<>();
    private final List<Need> needs = new ArrayList<>();
    private final List<Hole> holes = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private String unit = "each";
    private String cost = "1.00";
    private String scrapPercent = "0";
    private @Nullable String massKg = "0.100";
    private @Nullable String weighedKg;
    private int leadDays = 7;
    private String bin = "";
    private @Nullable Tracked tracked;
    private @Nullable Buying buying;
    private @Nullable Joined joined;
    private boolean stocked;
    private Making making = Making.NONE;
    private @Nullable CoatingSpec coat;
    private @Nullable Integer lengthMm;
    private @Nullable Fixing fixing;
    private List<String> cautions = List.of();
    private @Nullable Customs customs;
    private @Nullable Transport transport;
    private @Nullable Service service;
    private Upkeep upkeep = Upkeep.NONE;

    private PartSketch(String number, Source source) {
        this.number = new PartNumber(number);
        this.source = source;
        names.put("en", "Part " + number);
    }

    public static PartSketch bought(String number) {
        PartSketch part = new PartSketch(number, Source.BUY);
        part.buying = new Buying("Supplier A", "A-" + number, null, null);
        return part;
    }

    /** A part of the donor vehicle, which is used again. */
    public static PartSketch reused(String number) {
        return new PartSketch(number, Source.DONOR).cost("0");
    }

    public static PartSketch made(String number) {
        PartSketch part = new PartSketch(number, Source.MAKE);
        part.making = new Making(
                new Drawing("D-" + number, "1"),
                "steel-3",
                List.of(),
                List.of(new Operation("bend", BigDecimal.ONE, BigDecimal.ONE)));
        return part;
    }

    /** A bolt after the tightening table, friction 0.12. */
    public static PartSketch bolt(String number, String thread, @Nullable String torqueNm) {
        return bought(number)
                .fixing(new Fixing(
                        thread,
                        new BigDecimal("25"),
                        "8.8",
                        torqueNm == null ? null : new BigDecimal(torqueNm),
                        torqueNm == null ? null : "after VDI 2230, 90 % of yield",
                        torqueNm == null ? null : new BigDecimal("0.12")));
    }

    public PartSketch named(String language, String name) {
        names.put(language, name);
        return this;
    }

    public PartSketch unit(String value) {
        unit = value;
        return this;
    }

    public PartSketch cost(String value) {
        cost = value;
        return this;
    }

    public PartSketch scrap(String percent) {
        scrapPercent = percent;
        return this;
    }

    public PartSketch massKg(@Nullable String value) {
        massKg = value;
        return this;
    }

    public PartSketch weighedKg(String value) {
        weighedKg = value;
        return this;
    }

    public PartSketch leadDays(int value) {
        leadDays = value;
        return this;
    }

    public PartSketch bin(String value) {
        bin = value;
        return this;
    }

    public PartSketch tracked(@Nullable Tracked value) {
        tracked = value;
        return this;
    }

    public PartSketch buying(@Nullable Buying value) {
        buying = value;
        return this;
    }

    public PartSketch contains(String part, String quantity) {
        contains.add(new Contained(new PartNumber(part), new BigDecimal(quantity)));
        massKg = null;
        return this;
    }

    public PartSketch joined(Joined value) {
        joined = value;
        return this;
    }

    public PartSketch stocked() {
        stocked = true;
        return this;
    }

    public PartSketch making(Making value) {
        making = value;
        return this;
    }

    public PartSketch needs(Need need) {
        needs.add(need);
        return this;
    }

    /** Coated in a role, with hang points and sections as a simple bracket of 3 mm has them. */
    public PartSketch coat(String role, String areaM2) {
        return coat(new CoatingSpec(
                role, null, new BigDecimal(areaM2), new BigDecimal("3"), new BigDecimal("3"), List.of(), 2, null));
    }

    public PartSketch coat(@Nullable CoatingSpec value) {
        coat = value;
        return this;
    }

    public PartSketch lengthMm(int value) {
        lengthMm = value;
        return this;
    }

    public PartSketch fixing(Fixing value) {
        fixing = value;
        return this;
    }

    public PartSketch holes(String diameterMm, int count) {
        holes.add(new Hole(new BigDecimal(diameterMm), count));
        return this;
    }

    public PartSketch cautions(String... codes) {
        cautions = List.of(codes);
        return this;
    }

    public PartSketch port(String name) {
        ports.add(new Port(name, "main", List.of(), null));
        return this;
    }

    /** A connector that these parts mate with, and that the blank closes; an empty blank is none. */
    public PartSketch port(String name, String blank, String... mates) {
        ports.add(new Port(
                name,
                "main",
                Arrays.stream(mates).map(PartNumber::new).toList(),
                blank.isEmpty() ? null : new PartNumber(blank)));
        return this;
    }

    public PartSketch transport(String un) {
        transport = new Transport(un, "9", null);
        return this;
    }

    /** Dangerous goods of class 9 with that energy in Wh. */
    public PartSketch transport(String un, @Nullable String wattHours) {
        transport = new Transport(un, "9", wattHours == null ? null : new BigDecimal(wattHours));
        return this;
    }

    public PartSketch customs(String hs, String origin) {
        customs = new Customs(hs, origin);
        return this;
    }

    public PartSketch replaced(@Nullable Integer everyMonths, @Nullable Integer everyKm) {
        service = new Service(everyMonths, everyKm, Wording.english("wears"));
        return this;
    }

    public PartSketch document(Document document) {
        List<Document> documents = new ArrayList<>(upkeep.documents());
        documents.add(document);
        return upkept(documents, upkeep.replacedBy(), upkeep.alternates());
    }

    public PartSketch supersededBy(String part, boolean serviceOnly) {
        return upkept(
                upkeep.documents(),
                new Upkeep.Successor(new PartNumber(part), null, serviceOnly, Effectivity.ALWAYS),
                upkeep.alternates());
    }

    public PartSketch or(String part) {
        List<Upkeep.Alternate> alternates = new ArrayList<>(upkeep.alternates());
        alternates.add(new Upkeep.Alternate(new PartNumber(part), "does as well"));
        return upkept(upkeep.documents(), upkeep.replacedBy(), alternates);
    }

    private PartSketch upkept(
            List<Document> documents, Upkeep.@Nullable Successor replacedBy, List<Upkeep.Alternate> alternates) {
        upkeep = new Upkeep(
                documents,
                replacedBy,
                alternates,
                upkeep.notes(),
                upkeep.changes(),
                upkeep.coreCredit(),
                upkeep.inspect());
        return this;
    }

    public Part draw() {
        return new Part(
                number,
                "A",
                new Wording(names),
                unit,
                source,
                new BigDecimal(cost),
                new BigDecimal(scrapPercent),
                massKg == null ? null : new BigDecimal(massKg),
                leadDays,
                bin,
                tracked,
                buying,
                new Structure(contains, joined, stocked, weighedKg == null ? null : new BigDecimal(weighedKg)),
                making,
                needs,
                coat,
                lengthMm,
                fixing,
                holes,
                null,
                ports,
                cautions,
                Traits.NONE,
                customs,
                transport,
                service,
                Geometry.NONE,
                upkeep);
    }
}
