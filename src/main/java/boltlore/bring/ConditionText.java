package boltlore.bring;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.explanation.ConditionWords;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import boltlore.json.JsonOut;
import boltlore.measure.OptionName;
import boltlore.measure.PositionName;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** A condition in a cell: the catalogue's own JSON, of which one meaning has one text, however somebody wrote it. */
final class ConditionText {

    private ConditionText() {}

    /** In one order of options, values and parts, on one line. */
    static String of(Condition condition) {
        return flat(FamilySheet.json(ordered(condition)));
    }

    /** The same condition in that order; a text that is no condition stays as it is. */
    static String ordered(String text) {
        return read(text).map(ConditionText::of).orElse(text);
    }

    /** Whether it can be read as JSON at all; whether its words are known is for the catalogue's reader to say. */
    static boolean isCondition(String text) {
        return read(text).isPresent();
    }

    /** Whether the marks of a line with this condition have one for the value. */
    static boolean isMarked(String text, String option, String value) {
        return read(text)
                .flatMap(FamilySheet::marks)
                .filter(marks -> marks.containsKey(option) && marks.get(option).contains(value))
                .isPresent();
    }

    /** In plain words; a text that is no condition stays as it is. */
    static String words(String text, Family family) {
        return read(text).map(new ConditionWords(family)::of).orElse(text);
    }

    static String flat(JsonOut json) {
        return json.written().strip().replaceAll("\\s+", " ").replace("{ ", "{").replace(" }", "}");
    }

    private static Condition ordered(Condition condition) {
        if (condition instanceof Condition.Not not) {
            return new Condition.Not(ordered(not.condition()));
        }
        boolean all = condition instanceof Condition.All;
        if (!all && !(condition instanceof Condition.AnyOf)) {
            return condition;
        }
        List<Condition> parts = condition.parts().stream()
                .map(ConditionText::ordered)
                .flatMap(part -> part.getClass() == condition.getClass() ? part.parts().stream() : Stream.of(part))
                .sorted(Comparator.comparing(part -> flat(FamilySheet.json(part))))
                .toList();
        return parts.size() == 1 ? parts.get(0) : all ? new Condition.All(parts) : new Condition.AnyOf(parts);
    }

    private static Optional<Condition> read(String text) {
        return JsonFile.parse("", text.getBytes(StandardCharsets.UTF_8)) instanceof Outcome.Sound<Json> tree
                ? read(tree.value())
                : Optional.empty();
    }

    private static Optional<Condition> read(Json json) {
        if (!(json instanceof Json.Obj object)) {
            return Optional.empty();
        }
        List<Condition> parts = new ArrayList<>();
        for (String key : object.members().keySet()) {
            Optional<Condition> part = part(key, object.members().get(key));
            if (part.isEmpty()) {
                return part;
            }
            parts.add(part.get());
        }
        return Optional.of(parts.size() == 1 ? parts.get(0) : new Condition.All(parts));
    }

    private static Optional<Condition> part(String key, Json value) {
        return switch (key) {
            case "any" -> list(value).map(Condition.AnyOf::new);
            case "all" -> list(value).map(Condition.All::new);
            case "not" -> read(value).map(Condition.Not::new);
            case "filled" ->
                value instanceof Json.Text text
                        ? Optional.of(new Condition.Filled(new PositionName(text.text())))
                        : Optional.empty();
            default -> is(key, value);
        };
    }

    private static Optional<List<Condition>> list(Json value) {
        List<Condition> read = value instanceof Json.Arr list
                ? list.items().stream().flatMap(item -> read(item).stream()).toList()
                : List.of();
        return value instanceof Json.Arr list && read.size() == list.items().size()
                ? Optional.of(read)
                : Optional.empty();
    }

    private static Optional<Condition> is(String option, Json value) {
        SortedSet<String> values = new TreeSet<>();
        List<Json> items = value instanceof Json.Arr list ? list.items() : List.of(value);
        for (Json item : items) {
            if (!(item instanceof Json.Text text)) {
                return Optional.empty();
            }
            values.add(text.text());
        }
        return Optional.of(new Condition.Is(new OptionName(option), values));
    }
}
