package boltlore.sketch;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Caution;
import boltlore.catalogue.CoatedWhere;
import boltlore.catalogue.Coater;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Finish;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Fits;
import boltlore.catalogue.HouseRules;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Material;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Oven;
import boltlore.catalogue.Part;
import boltlore.catalogue.Powder;
import boltlore.catalogue.PowderCoat;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.Shipping;
import boltlore.catalogue.Stage;
import boltlore.catalogue.Stores;
import boltlore.catalogue.Weights;
import boltlore.catalogue.Workshop;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A catalogue in the making: one family 'van' in one workshop that walks its aisles F, H, C. */
public final class CatalogueSketch {

    public static final String FAMILY = "van";

    public static final PowderCoat BLACK =
            new PowderCoat("PB-BLACK", new BigDecimal("1.5"), 60, 80, 100, 180, 15, new BigDecimal("60"));

    private @Nullable PriceBook prices;
    private final Map<PartNumber, Part> parts = new TreeMap<>();
    private final List<PositionSketch> positions = new ArrayList<>();
    private final List<Option> options = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final Map<String, Finish> finishes = new TreeMap<>();
    private final Map<String, Material> materials = new TreeMap<>();
    private List<String> languages = List.of("en");
    private EndOfLine endOfLine = EndOfLine.NONE;
    private final Map<String, Wording> bags = new TreeMap<>();

    private List<String> sheetCautions = List.of();
    private Stores stores = Stores.NONE;

    public CatalogueSketch() {
        finish("black", new CoatedWhere.OwnOven("own"), BLACK);
        finish("zinc", new CoatedWhere.OutsideByPiece("Coater B", new BigDecimal("2.00")));
        material("steel-3", "7850", "3");
    }

    public CatalogueSketch part(PartSketch part) {
        Part drawn = part.draw();
        parts.put(drawn.number(), drawn);
        return this;
    }

    public CatalogueSketch position(PositionSketch position) {
        positions.add(position);
        return this;
    }

    public CatalogueSketch option(String name, String... values) {
        List<OptionValue> all = Arrays.stream(values)
                .map(value -> new OptionValue(value, Wording.english("With " + value), Facts.NONE))
                .toList();
        options.add(new Option(new OptionName(name), "Which " + name + "?", null, all, null, List.of()));
        return this;
    }

    public CatalogueSketch finish(String name, CoatedWhere where, PowderCoat... coats) {
        finishes.put(
                name, new Finish(name, Wording.english("Finish " + name), "blast", Set.of(), List.of(coats), where));
        return this;
    }

    public CatalogueSketch material(String name, String densityKgM3, String thicknessMm) {
        materials.put(
                name,
                new Material(
                        name,
                        "Sheet " + name,
                        "sheet",
                        null,
                        new BigDecimal(densityKgM3),
                        new BigDecimal(thicknessMm),
                        new BigDecimal("1.40"),
                        null,
                        null));
        return this;
    }

    /** No order may be so. */
    public CatalogueSketch never(Condition condition) {
        limits.add(new Limit("limit-" + limits.size(), "It does not work.", null, condition, null));
        return this;
    }

    public CatalogueSketch prices(PriceBook book) {
        prices = book;
        return this;
    }

    public CatalogueSketch endOfLine(EndOfLine value) {
        endOfLine = value;
        return this;
    }

    public CatalogueSketch bag(String code, String says) {
        bags.put(code, Wording.english(says));
        return this;
    }

    public CatalogueSketch stores(Stores value) {
        stores = value;
        return this;
    }

    /** Aisles F, H, C three metres apart, ten bays of one metre, with the start before F. */
    public CatalogueSketch layout() {
        return stores(new Stores(
                new Stores.Layout(
                        11_000,
                        0,
                        Map.of(
                                "F", new Stores.Aisle(0, 1_000, 1_000),
                                "H", new Stores.Aisle(3_000, 1_000, 1_000),
                                "C", new Stores.Aisle(6_000, 1_000, 1_000))),
                1,
                Map.of(),
                Map.of()));
    }

    /** Names of the sheets that a caution always stands on. */
    public CatalogueSketch sheetCautions(Collection<String> sheets) {
        sheetCautions = List.copyOf(sheets);
        return this;
    }

    public CatalogueSketch languages(String... codes) {
        languages = List.of(codes);
        return this;
    }

    public Catalogue draw() {
        Map<String, FinishRule> roles = new LinkedHashMap<>();
        roles.put("chassis", new FinishRule.Fixed("black"));
        roles.put("small", new FinishRule.Fixed("zinc"));
        Family family = new Family(
                FAMILY,
                Wording.english("Van"),
                null,
                options,
                limits,
                roles,
                List.of(),
                positions.stream().map(PositionSketch::draw).toList(),
                List.of(),
                List.of(),
                Weights.NONE,
                Electrics.NONE,
                endOfLine,
                List.of(),
                Fits.NONE);
        return new Catalogue(
                workshop(),
                finishes,
                materials,
                parts,
                Map.of(FAMILY, family),
                "revision",
                prices,
                Shipping.NONE,
                null,
                stores,
                HouseRules.NONE);
    }

    private Workshop workshop() {
        return new Workshop(
                "Workshop",
                "Place",
                Currency.getInstance("EUR"),
                new BigDecimal("50.00"),
                5,
                languages.get(0),
                languages,
                List.of(stage("front", "Front bay"), stage("cabin", "Cabin"), stage("rear", "Rear bay")),
                bags,
                List.of("drive"),
                List.of("F", "H", "C"),
                Map.of(),
                Map.of("Supplier A", "Supplier A"),
                Map.of(),
                Map.of(),
                cautions(),
                coating());
    }

    private static Stage stage(String name, String says) {
        return new Stage(name, Wording.english(says));
    }

    private Map<String, Caution> cautions() {
        Map<String, Caution> cautions = new TreeMap<>();
        cautions.put("high-voltage", caution("high-voltage", "bill", "picking"));
        cautions.put("lift-two", caution("lift-two", "bill", "picking"));
        cautions.put("lift-gear", caution("lift-gear", "bill", "picking"));
        cautions.put("lithium", caution("lithium", "picking"));
        cautions.put("oven", caution("oven", "coating"));
        if (!sheetCautions.isEmpty()) {
            cautions.put(
                    "sheets", new Caution("sheets", Wording.english("Mind the sheets."), List.of(), sheetCautions));
        }
        return cautions;
    }

    private static Caution caution(String code, String... sheets) {
        return new Caution(code, Wording.english("Mind " + code + "."), List.of(sheets), List.of());
    }

    private static CoatingShop coating() {
        Oven oven = new Oven(
                "own",
                "Box oven",
                new EnvelopeMm(2000, 1000, 1000),
                10,
                new BigDecimal("100"),
                new BigDecimal("10"),
                new BigDecimal("50"));
        return new CoatingShop(
                Map.of("own", oven),
                List.of(),
                Map.of("Coater B", new Coater("Coater B", "Small parts", 6, false)),
                List.of(),
                Map.of("PB-BLACK", new Powder("PB-BLACK", "Black", new BigDecimal("8.00"))),
                new BigDecimal("10.00"));
    }
}
