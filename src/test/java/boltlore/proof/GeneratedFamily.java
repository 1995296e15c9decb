package boltlore.proof;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Line;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Part;
import boltlore.catalogue.Position;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Large families made up from a seed: each position is decided by one or two options and has a line for each of their
 * cases; every fifth position carries the next one, every seventh follows another by 'filled'.
 */
public final class GeneratedFamily {

    private static final int LINES_AT_A_POSITION = 5;

    private final Random random;
    private final List<Option> options = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Position> positions = new ArrayList<>();
    private final Map<PartNumber, Part> parts = new LinkedHashMap<>();

    private GeneratedFamily(long seed) {
        random = new Random(seed);
    }

    /** A catalogue with one family 'van' of about so many lines. */
    public static Catalogue of(int lines, int optionCount, int limitCount, long seed) {
        GeneratedFamily made = new GeneratedFamily(seed);
        made.options(optionCount);
        made.limits(limitCount);
        for (int i = 0; i < lines / LINES_AT_A_POSITION; i++) {
            made.position(i);
        }
        Catalogue empty = new CatalogueSketch().draw();
        Family family = Altered.with(
                Altered.with(
                        Altered.with(empty.family(CatalogueSketch.FAMILY), "options", made.options),
                        "limits",
                        made.limits),
                "positions",
                made.positions);
        return Altered.with(
                Altered.with(empty, "parts", made.parts), "families", Map.of(CatalogueSketch.FAMILY, family));
    }

    private void options(int count) {
        for (int i = 0; i < count; i++) {
            List<OptionValue> values = new ArrayList<>();
            int many = 2 + random.nextInt(4);
            for (int j = 0; j < many; j++) {
                values.add(new OptionValue("v" + j, Wording.english("Value " + j), Facts.NONE));
            }
            options.add(new Option(new OptionName("option-" + i), "Which?", null, values, null, List.of()));
        }
    }

    /** A limit ties an option to one of the next few. */
    private void limits(int count) {
        for (int i = 0; i < count; i++) {
            int one = random.nextInt(options.size());
            int other = Math.min(options.size() - 1, one + 1 + random.nextInt(4));
            if (one != other) {
                limits.add(new Limit(
                        "limit-" + i,
                        "So it is.",
                        null,
                        is(one, value(one)),
                        new Condition.Not(is(other, value(other)))));
            }
        }
    }

    private int value(int option) {
        return random.nextInt(options.get(option).values().size());
    }

    private Condition is(int option, int value) {
        return new Condition.Is(options.get(option).name(), new TreeSet<>(Set.of("v" + value)));
    }

    private void position(int number) {
        PositionName name = new PositionName("position-" + number);
        List<Line> lines = new ArrayList<>();
        int one = random.nextInt(options.size());
        int other = (one + 1 + random.nextInt(3)) % options.size();
        for (Condition when : cases(one, other)) {
            lines.add(line(number, lines.size(), when));
        }
        Condition due = number % 7 == 6 ? new Condition.Filled(new PositionName("position-" + (number - 1))) : null;
        positions.add(new Position(
                name,
                Wording.english("Place " + number),
                "drive",
                "front",
                "bag",
                null,
                Fill.ONE,
                due,
                number % 5 == 4
                        ? List.of(positions.get(number - 1).lines().stream()
                                .map(Line::name)
                                .toList())
                        : List.of(),
                List.of(),
                lines));
    }

    /** Exclusive cases, five at most, that leave nothing out. */
    private List<Condition> cases(int one, int other) {
        List<Condition> all = new ArrayList<>();
        int values = options.get(one).values().size();
        for (int i = 0; i < values; i++) {
            if (i == 0 && values < LINES_AT_A_POSITION) {
                all.add(new Condition.All(List.of(is(one, 0), is(other, 0))));
                all.add(new Condition.All(List.of(is(one, 0), new Condition.Not(is(other, 0)))));
            } else {
                all.add(is(one, i));
            }
        }
        return all;
    }

    private Line line(int position, int number, Condition when) {
        PartNumber part = new PartNumber("P-" + position + "-" + number);
        parts.put(part, PartSketch.bought(part.text()).draw());
        List<PositionName> carries =
                position % 5 == 3 ? List.of(new PositionName("position-" + (position + 1))) : List.of();
        return new Line(
                new LineName("line-" + position + "-" + number),
                part,
                BigDecimal.ONE,
                when,
                carries,
                List.of(),
                List.of(),
                "");
    }
}
