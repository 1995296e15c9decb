package boltlore.catalogue.json;

import boltlore.json.Json;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which entry of a family's file a place in it belongs to.
 *
 * @param list that it stands in: positions, lines, options, values or limits
 * @param of the position of a line, the option of a value; else empty
 * @param key below the entry, or empty for the entry itself
 */
public record EntryPlace(String list, String of, String name, String key) {

    private static final Map<String, String> NAMED_BY =
            Map.of("positions", "position", "lines", "line", "options", "option", "values", "value", "limits", "limit");

    /**
     * The entry that the place lies in.
     *
     * @param tree of the file
     * @param pointer to the place (RFC 6901)
     * @return the innermost entry with the key below it; none outside of entries
     */
    public static Optional<EntryPlace> at(Json tree, String pointer) {
        List<String> steps = List.of(pointer.split("/", -1));
        Optional<EntryPlace> found = Optional.empty();
        Json at = tree;
        for (int i = 1; i < steps.size(); i++) {
            String step = steps.get(i).replace("~1", "/").replace("~0", "~");
            if (at instanceof Json.Arr items && step.matches("\\d{1,7}")) {
                int index = Integer.parseInt(step);
                at = index < items.items().size() ? items.items().get(index) : items;
                found = entry(steps.get(i - 1), at, items.items().size() == 1, found)
                        .or(keep(found));
            } else {
                found = found.map(entry -> entry.key().isEmpty() ? entry.with(step) : entry);
                at = at instanceof Json.Obj object ? object.members().getOrDefault(step, object) : at;
            }
        }
        return found;
    }

    private static Supplier<Optional<EntryPlace>> keep(Optional<EntryPlace> found) {
        return () -> found;
    }

    private static Optional<EntryPlace> entry(String list, Json entry, boolean only, Optional<EntryPlace> around) {
        if (!(entry instanceof Json.Obj object) || !NAMED_BY.containsKey(list)) {
            return Optional.empty();
        }
        String of = around.map(EntryPlace::name).orElse("");
        String part = Defaults.slug(EntryEdits.text(object.members().get("part")));
        String usual = list.equals("lines") ? only ? of : of + "-" + part : part;
        String own = EntryEdits.text(object.members().get(NAMED_BY.get(list)));
        return Optional.of(new EntryPlace(list, of, own.isEmpty() ? usual : own, ""));
    }

    private EntryPlace with(String step) {
        return new EntryPlace(list, of, name, step);
    }
}
