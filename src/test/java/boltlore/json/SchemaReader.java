package boltlore.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads nothing, but draws the schema (JSON Schema 2020-12) of the object from what it is asked for. */
public final class SchemaReader extends ObjectReader {

    private static final String COMMON = "common.schema.json#/$defs/";

    /** Keys that the workshop's defaults or other keys may stand in for, before anything is asked. */
    private static final Set<String> COMPLETED = Set.of(
            "parts/parts/revision",
            "parts/parts/unit",
            "parts/parts/source",
            "kit/positions/position",
            "kit/positions/says",
            "kit/positions/subSystem",
            "kit/positions/stage",
            "kit/positions/fill",
            "kit/positions/lines",
            "kit/positions/lines/line",
            "kit/positions/lines/quantity",
            "family/options/asks",
            "family/options/values/says");

    private final Map<String, JsonOut> properties = new LinkedHashMap<>();
    private final Set<String> required = new TreeSet<>();
    private final List<KeyRule> rules = new ArrayList<>();
    private final String path;
    private final Descriptions descriptions;
    private JsonOut.@Nullable Members entries;
    private final Map<String, Json> answers;
    private final Map<TextShape, String> commonTexts;

    /**
     * @param path keys around the object, divided by '/', after the name of the schema
     * @param commonTexts texts that the common schema holds, with their names there
     * @param answers values to be had at once, where the reading goes on only with one that is known
     */
    public SchemaReader(
            String path, Descriptions descriptions, Map<TextShape, String> commonTexts, Map<String, String> answers) {
        super(new Json.Obj(SourceLocation.document(path, 0), Map.of()), new Faults(), false);
        this.path = path;
        this.descriptions = descriptions;
        this.commonTexts = commonTexts;
        this.answers = new LinkedHashMap<>();
        answers.forEach((key, text) -> this.answers.put(key, new Json.Text(spot(), text)));
    }

    @Override
    protected Optional<Json> take(String key, boolean isRequired, Shape shape) {
        String at = path + "/" + key;
        properties.computeIfAbsent(key, any -> {
            JsonOut.Members drawn = drawn(at, shape);
            return descriptions
                    .of(at)
                    .map(says -> drawn.put("description", says))
                    .orElse(drawn);
        });
        if (isRequired && !COMPLETED.contains(at)) {
            required.add(key);
        }
        return Optional.ofNullable(answers.get(key));
    }

    @Override
    public boolean breaks(KeyRule rule) {
        rules.add(rule);
        return false;
    }

    @Override
    public <T> Map<String, T> entries(TextShape shape, Function<ObjectReader, T> reading) {
        entries = JsonOut.object()
                .put("type", "object")
                .put("propertyNames", text(shape))
                .put("additionalProperties", keyed(path, reading));
        return Map.of();
    }

    @Override
    public void done() {
        // Every key is known that is asked for.
    }

    /** The schema of what has been asked for. */
    public JsonOut.Members drawn() {
        return drawn(JsonOut.object());
    }

    /** The same behind what has been put. */
    public JsonOut.Members drawn(JsonOut.Members into) {
        if (entries != null) {
            return entries;
        }
        JsonOut.Members all = JsonOut.object();
        properties.forEach(all::put);
        into.put("type", "object").put("properties", all);
        into.putIfAny("required", required).put("additionalProperties", false);
        List<JsonOut> drawn = rules.stream().distinct().map(SchemaReader::rule).toList();
        return drawn.isEmpty() ? into : into.put("allOf", JsonOut.list(drawn));
    }

    private JsonOut.Members drawn(String at, Shape shape) {
        if (shape instanceof Shape.Plain plain) {
            return plain(plain);
        }
        if (shape instanceof TextShape text) {
            return text(text);
        }
        if (shape instanceof Range range) {
            boolean above = range.least().signum() == 0 && !range.leastItself();
            String sign = above ? "positive" : range.least().signum() < 0 ? "decimal" : "notNegative";
            return number(sign, range.least(), range.leastItself(), range.most());
        }
        if (shape instanceof Shape.Whole whole) {
            String sign = whole.least() < 0 ? "whole" : "count";
            return number(sign, BigDecimal.valueOf(whole.least()), true, BigDecimal.valueOf(whole.most()));
        }
        if (shape instanceof Allowed<?> allowed) {
            return JsonOut.object().put("enum", JsonOut.texts(allowed.byName().keySet()));
        }
        if (shape instanceof Shape.ListOf list) {
            return list(at, list);
        }
        if (shape instanceof Shape.Read read) {
            return keyed(at, read.reading());
        }
        return ref(((Shape.Named) shape).name());
    }

    @SuppressWarnings("ReturnValueIgnored") // what is asked for counts, not what is read
    private JsonOut.Members keyed(String at, Function<ObjectReader, ?> reading) {
        SchemaReader inner = new SchemaReader(at, descriptions, commonTexts, Map.of());
        reading.apply(inner);
        return inner.drawn();
    }

    private JsonOut.Members list(String at, Shape.ListOf list) {
        JsonOut.Members drawn = JsonOut.object().put("type", "array").put("items", drawn(at, list.items()));
        if (list.some()) {
            drawn.put("minItems", 1);
        }
        return list.once() ? drawn.put("uniqueItems", true) : drawn;
    }

    private static JsonOut.Members plain(Shape.Plain plain) {
        return switch (plain) {
            case TRUTH -> JsonOut.object().put("type", "boolean");
            case ANY -> JsonOut.object();
            case TEXT, DATE, WORDING -> ref(plain.name().toLowerCase(Locale.ROOT));
        };
    }

    private JsonOut.Members text(TextShape shape) {
        String name = commonTexts.get(shape);
        return name == null ? CommonSchema.text(shape) : ref(name);
    }

    /** Bounds are for numbers, the pattern is for decimals as texts: each leaves the other alone. */
    private static JsonOut.Members number(String ofSign, BigDecimal least, boolean itself, BigDecimal most) {
        return ref(ofSign)
                .put(itself ? "minimum" : "exclusiveMinimum", JsonOut.number(least))
                .put("maximum", JsonOut.number(most));
    }

    private static JsonOut.Members ref(String name) {
        return JsonOut.object().put("$ref", COMMON + name);
    }

    private static JsonOut rule(KeyRule rule) {
        if (rule instanceof KeyRule.OneWay oneWay) {
            return oneWay(oneWay);
        }
        if (rule instanceof KeyRule.Needs needs) {
            return JsonOut.object()
                    .put("dependentRequired", JsonOut.object().put(needs.key(), JsonOut.texts(needs.others())));
        }
        if (rule instanceof KeyRule.Apart apart) {
            return JsonOut.object().put("not", has(List.of(apart.one(), apart.other())));
        }
        if (rule instanceof KeyRule.Other other) {
            JsonOut.Members not =
                    JsonOut.object().put("not", JsonOut.object().put("enum", JsonOut.texts(other.values())));
            return JsonOut.object().put("properties", JsonOut.object().put(other.key(), not));
        }
        if (rule instanceof KeyRule.With with) {
            return when(with.key(), with.value(), has(List.of(with.other())));
        }
        KeyRule.Without without = (KeyRule.Without) rule;
        return when(without.key(), without.value(), none(without.others()));
    }

    private static JsonOut oneWay(KeyRule.OneWay rule) {
        Set<String> all = KeyRule.OneWay.keys(String.join(" ", rule.ways()));
        return JsonOut.object().put("oneOf", JsonOut.list(rule.ways(), way -> {
            Set<String> others = new TreeSet<>(all);
            others.removeAll(KeyRule.OneWay.keys(way));
            JsonOut.Members has = has(KeyRule.OneWay.keys(way));
            return others.isEmpty() ? has : has.put("properties", no(others));
        }));
    }

    private static JsonOut when(String key, String value, JsonOut then) {
        JsonOut is = JsonOut.object()
                .put("properties", JsonOut.object().put(key, JsonOut.object().put("const", value)))
                .put("required", JsonOut.texts(List.of(key)));
        return JsonOut.object().put("if", is).put("then", then);
    }

    private static JsonOut.Members has(Collection<String> keys) {
        return JsonOut.object().put("required", JsonOut.texts(keys));
    }

    private static JsonOut none(Set<String> keys) {
        return JsonOut.object().put("properties", no(keys));
    }

    private static JsonOut no(Set<String> keys) {
        JsonOut.Members no = JsonOut.object();
        keys.forEach(key -> no.put(key, false));
        return no;
    }
}
