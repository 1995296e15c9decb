package boltlore.choosing;

import static boltlore.sketch.PartSketch.bought;
import static boltlore.sketch.PartSketch.made;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Companion;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Need;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.PartNumber;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Random catalogues of one small family: assemblies bought and made, needs for each and on joints, companions, scrap,
 * coated parts whose finish an option decides, positions filled by each other.
 */
final class SmallKits {

    private static final int PARTS = 8;

    private final Random random;
    private final boolean stopping;
    private final SmallFamilies small;

    SmallKits(long seed) {
        this(seed, false);
    }

    /** @param stopping whether some positions take one line and are to be filled, so that kits are stopped */
    SmallKits(long seed, boolean stopping) {
        this.stopping = stopping;
        this.random = new Random(seed);
        this.small = new SmallFamilies(seed);
    }

    SmallFamilies families() {
        return small;
    }

    Catalogue catalogue() {
        Family family = coloured(small.family());
        Map<PartNumber, Part> parts = new TreeMap<>();
        for (int i = 0; i < PARTS; i++) {
            Part part = part(i);
            parts.put(part.number(), part);
        }
        Family whole = new Family(
                family.name(),
                family.says(),
                null,
                family.options(),
                family.limits(),
                Map.of("paint", new FinishRule.DecidedBy(family.options().get(0).name())),
                List.of(),
                positions(family.options()),
                List.of(new Companion(number(1), List.of(need(family.options(), 7)), List.of())));
        Catalogue empty = new CatalogueSketch().draw();
        return new Catalogue(
                empty.workshop(), empty.finishes(), empty.materials(), parts, Map.of(whole.name(), whole), "small");
    }

    /** The first option's values take turns with the two finishes there are. */
    private static Family coloured(Family family) {
        List<Option> options = new ArrayList<>(family.options());
        Option first = options.get(0);
        List<OptionValue> values = new ArrayList<>();
        for (OptionValue value : first.values()) {
            String finish = values.size() % 2 == 0 ? "black" : "zinc";
            Facts facts = new Facts(null, null, null, null, List.of(), List.of(), List.of(), null, null, null, finish);
            values.add(new OptionValue(value.value(), value.says(), facts));
        }
        options.set(0, new Option(first.name(), first.asks(), null, values, null, List.of()));
        return SmallFamilies.family(options, family.limits());
    }

    private Part part(int place) {
        PartSketch part = random.nextBoolean() ? made("P-" + place) : bought("P-" + place);
        part.cost(random.nextInt(50) + "." + (10 + random.nextInt(90)))
                .massKg("0." + (1 + random.nextInt(9)))
                .leadDays(random.nextInt(30))
                .scrap(random.nextInt(3) == 0 ? "7" : "0");
        if (random.nextInt(3) == 0) {
            part.coat("paint", "0." + (1 + random.nextInt(9)));
        }
        for (int other = place + 1; other < PARTS; other++) {
            if (random.nextInt(5) == 0) {
                part.contains("P-" + other, String.valueOf(1 + random.nextInt(3)));
            }
            if (random.nextInt(6) == 0) {
                part.needs(random.nextBoolean() ? PositionSketch.each("P-" + other, "2") : joint(other));
            }
        }
        return part.draw();
    }

    private Need joint(int other) {
        return PositionSketch.atJoint("j" + random.nextInt(2), "P-" + other, String.valueOf(1 + random.nextInt(4)));
    }

    private Need need(List<Option> options, int other) {
        Need always = random.nextBoolean() ? joint(other) : PositionSketch.each("P-" + other, "1");
        return new Need(always.part(), always.ask(), small.condition(options, 1), always.because());
    }

    private List<Position> positions(List<Option> options) {
        Map<String, Position> positions = new LinkedHashMap<>();
        int many = 1 + random.nextInt(4);
        for (int i = 0; i < many; i++) {
            PositionSketch position = PositionSketch.at("q" + i).fill(stopping && i % 2 == 0 ? Fill.ONE : Fill.FREE);
            int lines = 1 + random.nextInt(3);
            for (int j = 0; j < lines; j++) {
                String quantity = String.valueOf(1 + random.nextInt(3));
                position.line(
                        "l" + i + "-" + j, "P-" + random.nextInt(PARTS), quantity, when(options, i), needs(options));
            }
            positions.put("q" + i, position.draw());
        }
        return List.copyOf(positions.values());
    }

    private Condition when(List<Option> options, int place) {
        Condition own = small.condition(options, 2);
        if (place == 0 || random.nextInt(3) > 0) {
            return own;
        }
        Condition filled = new Condition.Filled(new boltlore.measure.PositionName("q" + random.nextInt(place)));
        return new Condition.AnyOf(List.of(new Condition.Not(filled), own));
    }

    private Need[] needs(List<Option> options) {
        return random.nextInt(3) == 0 ? new Need[] {need(options, PARTS - 1)} : new Need[0];
    }

    private static PartNumber number(int place) {
        return new PartNumber("P-" + place);
    }

    static BigDecimal hair() {
        return new BigDecimal("0.000001");
    }
}
