package boltlore.bring;

import boltlore.catalogue.json.KitEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What is other in the lines of a kit.
 *
 * @param known as they stand in the catalogue, by name
 * @param now as they are to be
 */
record LineEdits(Map<String, SortedMap<String, String>> known, Map<String, SortedMap<String, String>> now) {

    List<KitEdit> edits() {
        Map<String, String> renamed = renamed();
        List<KitEdit> edits = new ArrayList<>();
        now.forEach((name, row) -> {
            SortedMap<String, String> before = known.get(renamed.getOrDefault(name, name));
            boolean moves = before != null && !cell(before, "position").equals(cell(row, "position"));
            if (before != null && moves) {
                edits.add(KitEdit.removed(cell(before, "position"), name));
            }
            if (before == null || moves) {
                edits.add(added(name, row));
            } else {
                KitEdit edit = changed(renamed.getOrDefault(name, name), name, before, row);
                if (edit.changes()) {
                    edits.add(edit);
                }
            }
        });
        known.forEach((name, row) -> {
            if (!now.containsKey(name) && !renamed.containsValue(name)) {
                edits.add(KitEdit.removed(cell(row, "position"), name));
            }
        });
        return edits;
    }

    private static KitEdit added(String name, SortedMap<String, String> row) {
        return KitEdit.added(
                cell(row, "position"),
                name,
                cell(row, "part"),
                cell(row, "quantity"),
                cell(row, "when"),
                cell(row, "note"));
    }

    private static KitEdit changed(
            String name, String newName, SortedMap<String, String> before, SortedMap<String, String> row) {
        return new KitEdit(
                cell(row, "position"),
                name,
                KitEdit.change(name, newName),
                change(before, row, "part"),
                change(before, row, "quantity"),
                change(before, row, "when"),
                change(before, row, "note"),
                KitEdit.Kind.CHANGED);
    }

    private static Optional<KitEdit.Change> change(
            SortedMap<String, String> before, SortedMap<String, String> row, String key) {
        return KitEdit.change(cell(before, key), cell(row, key));
    }

    /** New names with the old one, where a line of the same part has gone from the same position. */
    private Map<String, String> renamed() {
        Map<String, String> renamed = new TreeMap<>();
        Set<String> gone = new TreeSet<>(known.keySet());
        gone.removeAll(now.keySet());
        for (boolean all : new boolean[] {true, false}) {
            now.forEach((name, row) -> {
                if (!known.containsKey(name) && !renamed.containsKey(name)) {
                    List<String> likely = gone.stream()
                            .filter(old -> isLike(known.getOrDefault(old, row), row, all))
                            .toList();
                    if (likely.size() == 1) {
                        renamed.put(name, likely.get(0));
                        gone.removeAll(likely);
                    }
                }
            });
        }
        return renamed;
    }

    private static boolean isLike(SortedMap<String, String> old, SortedMap<String, String> row, boolean all) {
        return cell(old, "position").equals(cell(row, "position"))
                && cell(old, "part").equals(cell(row, "part"))
                && (!all
                        || (cell(old, "quantity").equals(cell(row, "quantity"))
                                && cell(old, "when").equals(cell(row, "when"))));
    }

    static String cell(SortedMap<String, String> row, String key) {
        return row.getOrDefault(key, "");
    }
}
