package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.EffectivityScale;
import boltlore.catalogue.Option;
import boltlore.faults.Nearest;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.Shape;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.OptionName;
import boltlore.measure.PositionName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads conditions, and notes every option, value and position that they speak of. */
final class ConditionReading {

    static final String FILLED = "filled";

    /** Words of the language that no option may be called. */
    static final Set<String> RESERVED = Collections.unmodifiableSet(new TreeSet<>(List.of(
            "all", "any", FILLED, "not", EffectivityScale.By.PLACED.written(), EffectivityScale.By.CHASSIS.written())));

    /** Whether a condition may ask if a position is filled. */
    enum Over {
        OPTIONS,
        OPTIONS_AND_POSITIONS
    }

    private static final Shape OVER_OPTIONS = new Shape.Named("conditionOverOptions");
    private static final Shape OVER_BOTH = new Shape.Named("condition");

    private final Reading reading;
    private final Over over;

    ConditionReading(Reading reading, Over over) {
        this.reading = reading;
        this.over = over;
    }

    /** The condition under an optional key; always where it is missing. */
    Condition orAlways(ObjectReader reader, String key) {
        return reader.find(key, shape()).map(this::read).orElse(Condition.ALWAYS);
    }

    @Nullable
    Condition orNull(ObjectReader reader, String key) {
        return reader.find(key, shape()).map(this::read).orElse(null);
    }

    private Shape shape() {
        return over == Over.OPTIONS ? OVER_OPTIONS : OVER_BOTH;
    }

    private Condition read(Json json) {
        if (!(json instanceof Json.Obj object)) {
            refuse(json, "a condition in { }, such as {\"drive-side\": \"left\"}");
            return Condition.ALWAYS;
        }
        List<Condition> conjuncts = new ArrayList<>();
        object.members().forEach((key, value) -> conjuncts.add(conjunct(key, value)));
        return conjuncts.size() == 1 ? conjuncts.get(0) : new Condition.All(conjuncts);
    }

    private Condition conjunct(String key, Json value) {
        return switch (key) {
            case "any" -> new Condition.AnyOf(conditions(value));
            case "all" -> new Condition.All(conditions(value));
            case "not" -> new Condition.Not(read(value));
            case FILLED -> filled(value);
            case "placed", "chassis" -> EffectivityReading.condition(key, value, reading);
            default -> is(key, value);
        };
    }

    private List<Condition> conditions(Json json) {
        if (json instanceof Json.Arr array && !array.items().isEmpty()) {
            return array.items().stream().map(this::read).toList();
        }
        refuse(json, "a list of at least one condition");
        return List.of(Condition.ALWAYS);
    }

    private Condition filled(Json json) {
        if (over == Over.OPTIONS) {
            reading.faults()
                    .add(json.location()
                            .fault(
                                    "'filled'",
                                    "options and their values alone",
                                    "Say which choices fill the position."));
            return Condition.ALWAYS;
        }
        String position = Values.text(json, TextShape.NAME, reading.faults()).orElse("");
        if (!position.isEmpty()) {
            reading.mention(Kind.POSITION, position, json.location());
        }
        return new Condition.Filled(new PositionName(position));
    }

    private Condition is(String option, Json json) {
        if (TextShape.NAME.fits().test(option)) {
            reading.mention(Kind.OPTION, option, json.location());
        } else {
            reading.faults()
                    .add(json.location()
                            .fault("'" + option + "'", Kind.OPTION.says(), Nearest.advice(option, RESERVED, "")));
        }
        SortedSet<String> values = new TreeSet<>();
        if (json instanceof Json.Arr array) {
            if (array.items().isEmpty()) {
                refuse(json, "a value, or a list of at least one value");
            }
            array.items().forEach(item -> value(option, item, values));
        } else {
            value(option, json, values);
        }
        return reading.takesSeveral(option)
                ? oneOf(new OptionName(option), values)
                : new Condition.Is(new OptionName(option), Collections.unmodifiableSortedSet(values));
    }

    /** That one of these is among the answers. */
    private static Condition oneOf(OptionName group, SortedSet<String> values) {
        SortedSet<String> yes = Collections.unmodifiableSortedSet(new TreeSet<>(Set.of(Option.YES)));
        List<Condition> each = values.stream()
                .<Condition>map(value -> new Condition.Is(Option.Group.member(group, value), yes))
                .toList();
        return each.size() == 1 ? each.get(0) : new Condition.AnyOf(each.isEmpty() ? List.of(Condition.ALWAYS) : each);
    }

    private void value(String option, Json json, SortedSet<String> values) {
        Values.text(json, TextShape.NAME, reading.faults()).ifPresent(value -> {
            if (values.add(value)) {
                reading.mentionValue(option, value, json.location());
            } else {
                refuse(json, "each value once");
            }
        });
    }

    private void refuse(Json json, String expected) {
        reading.faults().add(json.location().fault(json.shown(), expected, ""));
    }
}
