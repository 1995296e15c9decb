package boltlore.catalogue.json;

import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A position, option, value or limit of a family that is other than before.
 *
 * @param of the option of a value; else empty
 * @param after what a new one stands below; empty for the first
 * @param keys what changes, by the key of the catalogue; conditions as JSON, all else as text, empty where a key goes
 */
public record EntryEdit(
        What what, String of, String name, String after, SortedMap<String, KitEdit.Change> keys, KitEdit.Kind kind) {

    /** Keys under which a condition stands. */
    static final Set<String> CONDITIONS = Set.of("required", "never", "when", "then");

    /** What is edited. */
    public enum What {
        POSITION,
        OPTION,
        VALUE,
        LIMIT;

        /** The key that holds its name. */
        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** 'option lamp: asks 'Which lamp?' instead of 'Lamp?''. */
    String says(UnaryOperator<String> conditions) {
        String entry = what.key() + " " + name + (of.isEmpty() ? "" : " of option " + of);
        if (kind == KitEdit.Kind.REMOVED) {
            return entry + " is taken out";
        }
        return entry
                + (kind == KitEdit.Kind.ADDED ? " is new" : "")
                + (keys.isEmpty() ? "" : ": ")
                + keys.entrySet().stream()
                        .map(each -> change(
                                each.getKey(),
                                CONDITIONS.contains(each.getKey())
                                        ? each.getValue().in(conditions)
                                        : each.getValue()))
                        .collect(Collectors.joining("; "));
    }

    private static String change(String key, KitEdit.Change change) {
        String instead = change.from().isEmpty() ? "" : " instead of " + shown(change.from());
        return change.to().isEmpty() ? key + " left out" + instead : key + " " + shown(change.to()) + instead;
    }

    private static String shown(String value) {
        return "'" + value + "'";
    }
}
