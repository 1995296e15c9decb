package boltlore.trades.costing;

import boltlore.catalogue.Buying;
import boltlore.catalogue.CoatingSpec;
import boltlore.catalogue.Contained;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Geometry;
import boltlore.catalogue.Joined;
import boltlore.catalogue.Making;
import boltlore.catalogue.Operation;
import boltlore.catalogue.Part;
import boltlore.catalogue.Source;
import boltlore.catalogue.Structure;
import boltlore.catalogue.Traits;
import boltlore.catalogue.Upkeep;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part of which a test says only what matters to it. */
public final class SketchedPart {

    private final String number;
    private final Source source;
    private String cost = "1.00";
    private String scrapPercent = "0";
    private String massKg = "1";
    private int leadDays;
    private @Nullable Buying buying;
    private @Nullable CoatingSpec coat;
    private @Nullable Joined joined;
    private @Nullable Customs customs;
    private Making making = Making.NONE;
    private final List<Contained> contains = new ArrayList<>();

    private SketchedPart(String number, Source source) {
        this.number = number;
        this.source = source;
    }

    public static SketchedPart bought(String number) {
        return new SketchedPart(number, Source.BUY).from("Brennock Fixings", null, null);
    }

    public static SketchedPart made(String number) {
        return new SketchedPart(number, Source.MAKE);
    }

    public SketchedPart cost(String amount) {
        cost = amount;
        return this;
    }

    public SketchedPart scrap(String percent) {
        scrapPercent = percent;
        return this;
    }

    public SketchedPart days(int days) {
        leadDays = days;
        return this;
    }

    public SketchedPart from(String supplier, @Nullable String pack, @Nullable String least) {
        buying = new Buying(
                supplier,
                "X-" + number,
                pack == null ? null : new BigDecimal(pack),
                least == null ? null : new BigDecimal(least));
        return this;
    }

    public SketchedPart coated(String finish) {
        coat = new CoatingSpec(null, finish, new BigDecimal("0.5"), BigDecimal.ONE, BigDecimal.TEN, List.of(), 1, null);
        return this;
    }

    public SketchedPart operation(String name, String setUpMin, String runMin) {
        List<Operation> operations = new ArrayList<>(making.operations());
        operations.add(new Operation(name, new BigDecimal(setUpMin), new BigDecimal(runMin)));
        making = new Making(null, null, List.of(), operations);
        return this;
    }

    public SketchedPart welded() {
        joined = Joined.WELDED;
        return this;
    }

    public SketchedPart mass(String kg) {
        massKg = kg;
        return this;
    }

    public SketchedPart customs(String hs, String origin) {
        customs = new Customs(hs, origin);
        return this;
    }

    public SketchedPart contains(String part, String quantity) {
        contains.add(new Contained(new PartNumber(part), new BigDecimal(quantity)));
        return this;
    }

    public Part part() {
        return new Part(
                new PartNumber(number),
                "A",
                Wording.english("Part " + number),
                "each",
                source,
                new BigDecimal(cost),
                new BigDecimal(scrapPercent),
                contains.isEmpty() ? new BigDecimal(massKg) : null,
                leadDays,
                "",
                null,
                buying,
                new Structure(List.copyOf(contains), joined, false, null),
                making,
                List.of(),
                coat,
                null,
                null,
                List.of(),
                null,
                List.of(),
                List.of(),
                Traits.NONE,
                customs,
                null,
                null,
                Geometry.NONE,
                Upkeep.NONE);
    }
}
