package boltlore.bring;

import boltlore.catalogue.json.EntryEdit;
import boltlore.catalogue.json.EntryEdit.What;
import boltlore.catalogue.json.KitEdit;
import boltlore.faults.Fault;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What somebody has changed in a sheet of positions, options or limits.
 *
 * @param file that it stands in
 * @param table as it was written
 * @param faults are added to
 */
record EntryRows<R>(String file, EntryTable<R> table, List<Fault> faults) {

    /** The texts of a row by the catalogue's key, and where it stands. */
    private record Row(int number, SortedMap<String, String> cells) {

        String cell(String key) {
            return cells.getOrDefault(key, "");
        }

        /** Its name, together with that of its option. */
        String name(What what) {
            return what == What.VALUE
                    ? cell("option") + FamilySheet.IS + cell("value")
                    : cell(what.name().toLowerCase(Locale.ROOT));
        }
    }

    /** The edits of the first sheet with such headings; none where there is none. */
    List<EntryEdit> edits(List<Sheet> sheets) {
        List<EntryEdit> edits = new ArrayList<>();
        for (Sheet sheet : sheets) {
            Optional<Sheet.Line> head =
                    sheet.rows().values().stream().filter(this::isHead).findFirst();
            if (head.isPresent()) {
                compare(rows(sheet, head.get()), sheet, edits);
                return edits;
            }
        }
        return edits;
    }

    private boolean isHead(Sheet.Line line) {
        List<String> texts = line.cells().stream().map(GridCell::text).toList();
        return table.fields().stream()
                .filter(field -> !field.key().isEmpty())
                .allMatch(field -> texts.contains(field.heading()));
    }

    private List<Row> rows(Sheet sheet, Sheet.Line head) {
        List<String> texts = head.cells().stream().map(GridCell::text).toList();
        List<Row> rows = new ArrayList<>();
        for (Sheet.Line line : sheet.rows().tailMap(head.number(), false).values()) {
            SortedMap<String, String> cells = new TreeMap<>();
            for (EntryTable.Field<R> field : table.fields()) {
                GridCell cell = line.cell(texts.indexOf(field.heading()));
                if (!field.key().isEmpty() && !cell.text().isBlank()) {
                    cells.put(field.key(), cell.text().strip());
                }
            }
            if (!cells.isEmpty()) {
                rows.add(new Row(line.number(), cells));
            }
        }
        return rows;
    }

    private void compare(List<Row> rows, Sheet sheet, List<EntryEdit> edits) {
        Map<String, Row> known = new LinkedHashMap<>();
        for (R each : table.rows()) {
            SortedMap<String, String> cells = new TreeMap<>();
            table.fields().stream()
                    .filter(field -> !field.key().isEmpty())
                    .forEach(field -> cells.put(field.key(), field.text(each)));
            Row row = new Row(0, cells);
            known.put(row.name(table.what()), row);
        }
        Map<String, Row> now = new LinkedHashMap<>();
        for (Row row : rows) {
            String name = row.name(table.what());
            boolean named = table.fields().stream()
                    .filter(field -> field.key().equals("option") || field.key().equals(table.nameKey()))
                    .noneMatch(field -> row.cell(field.key()).isEmpty());
            if (!named || now.put(name, row) != null) {
                String found = named ? "'" + name + "' a second time" : "a row without a name";
                faults.add(new Fault(
                        file,
                        0,
                        sheet.name() + '!' + Sheet.address(row.number(), 0),
                        found,
                        "each by its name, once",
                        ""));
            }
        }
        if (table.what() == What.VALUE) {
            options(known, now, edits);
        }
        entries(known, now, edits);
    }

    private void entries(Map<String, Row> known, Map<String, Row> now, List<EntryEdit> edits) {
        Map<String, String> below = new LinkedHashMap<>();
        now.forEach((name, row) -> {
            String of = row.cell("option");
            String own = name.substring(of.isEmpty() ? 0 : of.length() + FamilySheet.IS.length());
            Row before = known.get(name);
            if (before != null) {
                below.put(of, own);
            }
            SortedMap<String, KitEdit.Change> changes = changes(before, row, false);
            if (before == null || !changes.isEmpty()) {
                KitEdit.Kind kind = before == null ? KitEdit.Kind.ADDED : KitEdit.Kind.CHANGED;
                edits.add(new EntryEdit(table.what(), of, own, below.getOrDefault(of, ""), changes, kind));
            }
        });
        known.forEach((name, row) -> {
            if (!now.containsKey(name) && isTakenOut(row, now)) {
                String of = row.cell("option");
                String own = name.substring(of.isEmpty() ? 0 : of.length() + FamilySheet.IS.length());
                edits.add(new EntryEdit(table.what(), of, own, "", new TreeMap<>(), KitEdit.Kind.REMOVED));
            }
        });
    }

    /** A position goes with its last line, and a value with its option. */
    private boolean isTakenOut(Row row, Map<String, Row> now) {
        return table.what() == What.LIMIT
                || (table.what() == What.VALUE
                        && now.values().stream()
                                .anyMatch(each -> each.cell("option").equals(row.cell("option"))));
    }

    private SortedMap<String, KitEdit.Change> changes(@Nullable Row before, Row now, boolean ofOption) {
        SortedMap<String, KitEdit.Change> changes = new TreeMap<>();
        for (EntryTable.Field<R> field : table.fields()) {
            boolean asked = !field.key().isEmpty()
                    && field.ofOption() == ofOption
                    && !field.key().equals(table.nameKey());
            String from = before == null ? "" : before.cell(field.key());
            if (asked && !field.key().equals("option")) {
                KitEdit.change(from, now.cell(field.key())).ifPresent(change -> changes.put(field.key(), change));
            }
        }
        return changes;
    }

    /** What is said of the options themselves, in the rows of their values. */
    private void options(Map<String, Row> known, Map<String, Row> now, List<EntryEdit> edits) {
        Map<String, Row> before = optionRows(known, Map.of());
        String below = "";
        for (Map.Entry<String, Row> each : optionRows(now, before).entrySet()) {
            Row was = before.get(each.getKey());
            below = was == null ? below : each.getKey();
            SortedMap<String, KitEdit.Change> changes = changes(was, each.getValue(), true);
            if (was == null || !changes.isEmpty()) {
                KitEdit.Kind kind = was == null ? KitEdit.Kind.ADDED : KitEdit.Kind.CHANGED;
                edits.add(new EntryEdit(What.OPTION, "", each.getKey(), below, changes, kind));
            }
        }
        Map<String, Row> left = optionRows(now, before);
        before.keySet().stream()
                .filter(name -> !left.containsKey(name))
                .forEach(name ->
                        edits.add(new EntryEdit(What.OPTION, "", name, "", new TreeMap<>(), KitEdit.Kind.REMOVED)));
    }

    /** One row an option: of its rows what is other than before, and its marked value. */
    private Map<String, Row> optionRows(Map<String, Row> values, Map<String, Row> before) {
        Map<String, Row> options = new LinkedHashMap<>();
        values.values().forEach(value -> {
            String name = value.cell("option");
            Row known = before.get(name);
            Row option = options.computeIfAbsent(name, any -> new Row(value.number(), new TreeMap<>()));
            for (String key : List.of("asks", "choose")) {
                String text = value.cell(key);
                if (!text.isEmpty()
                        && (option.cell(key).isEmpty()
                                || (known != null && option.cell(key).equals(known.cell(key))))) {
                    option.cells().put(key, text);
                }
            }
            if (Words.is(Words.Saying.MARK, value.cell("default"))) {
                option.cells().put("default", value.cell("value"));
            }
        });
        return options;
    }
}
