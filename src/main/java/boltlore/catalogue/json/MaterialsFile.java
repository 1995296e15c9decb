package boltlore.catalogue.json;

import boltlore.catalogue.BarLength;
import boltlore.catalogue.BarStock;
import boltlore.catalogue.Bending;
import boltlore.catalogue.Material;
import boltlore.catalogue.Saw;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** materials.json: what parts are cut from, the bars it is bought in, and the saws. */
final class MaterialsFile {

    private static final Allowed<String> FORMS = Allowed.of("sheet", "plate", "tube", "bar", "angle", "cable");

    /** What pre-treatments before a coat tell apart. */
    static final Allowed<String> METALS =
            Allowed.of("steel", "stainless-steel", "galvanised-steel", "aluminium", "copper", "brass");

    /** Stands in where the saw that a material names is not known, which is a fault by itself. */
    private static final Saw NO_SAW =
            new Saw("", "", BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

    /** Above the half of the thickness no sheet has its neutral line. */
    private static final Range K_FACTOR = new Range(BigDecimal.ZERO, false, new BigDecimal("0.5"));

    private final Reading reading;

    MaterialsFile(Reading reading) {
        this.reading = reading;
    }

    Map<String, Material> read(ObjectReader reader) {
        Map<String, Saw> saws = Keyed.by(reader.findObjects("saws", this::saw), Saw::name);
        return Keyed.by(reader.findObjects("materials", material -> material(material, saws)), Material::name);
    }

    private Saw saw(ObjectReader reader) {
        return new Saw(
                reading.named(reader, "saw", Kind.SAW),
                reader.text("says"),
                reader.decimal("kerfMm", Range.above(0, 50)),
                reader.decimal("headTrimMm", Range.between(0, 1000)),
                reader.decimal("heldTailMm", Range.between(0, 1000)),
                reader.decimal("steepestDegrees", Range.between(0, 80)));
    }

    private Material material(ObjectReader reader, Map<String, Saw> saws) {
        return new Material(
                reading.named(reader, "material", Kind.MATERIAL),
                reader.text("says"),
                reader.oneOf("form", FORMS),
                reader.findOneOf("metal", METALS),
                reader.decimal("densityKgM3", Range.above(0, 25_000)),
                reader.findDecimal("thicknessMm", Range.above(0, 1000)),
                reader.findDecimal("pricePerKg", Range.NOT_NEGATIVE),
                reader.findObject("stock", stock -> stock(stock, saws)).orElse(null),
                reader.findObject("bending", MaterialsFile::bending).orElse(null));
    }

    private BarStock stock(ObjectReader reader, Map<String, Saw> saws) {
        BarStock stock = new BarStock(
                saws.getOrDefault(reading.mentioned(reader, "saw", Kind.SAW), NO_SAW),
                reader.decimal("acrossMm", Range.above(0, 1000)),
                reader.truth("nestMitres", false),
                reader.decimal("keepFromMm", Range.above(0, 100_000)),
                reader.objects("bars", MaterialsFile::bar));
        if (reader.sound()) {
            check(stock, reader);
        }
        return stock;
    }

    private static BarLength bar(ObjectReader reader) {
        return new BarLength(reader.whole("lengthMm", 1, 100_000), reader.decimal("cost", Range.above(0, 1_000_000)));
    }

    private static void check(BarStock stock, ObjectReader reader) {
        Set<Integer> lengths = new HashSet<>();
        for (BarLength bar : stock.lengths()) {
            if (!lengths.add(bar.lengthMm())) {
                reader.faultAt("bars", bar.lengthMm() + " mm twice", "each length once", "Remove one of the two.");
            }
        }
        if (stock.longestPieceMm().signum() <= 0) {
            BigDecimal lost = stock.saw().headTrimMm().add(stock.saw().heldTailMm());
            String longest = "bars of at most " + stock.longest().lengthMm() + " mm";
            String longer = "bars longer than head trim and held tail of " + lost.toPlainString() + " mm";
            reader.faultAt("bars", longest, longer, "");
        }
    }

    private static Bending bending(ObjectReader reader) {
        return new Bending(reader.decimal("insideRadiusMm", Range.above(0, 1000)), reader.decimal("kFactor", K_FACTOR));
    }
}
