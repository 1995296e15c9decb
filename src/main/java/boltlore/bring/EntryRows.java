package boltlore.bring;

import boltlore.catalogue.json.EntryEdit;
import boltlore.catalogue.json.EntryEdit.What;
import boltlore.catalogue.json.KitEdit;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What somebody has changed in a sheet of positions, options or limits.
 *
 * @param table as it stands in the catalogue
 * @param base the rows as the workbook was written
 */
record EntryRows<R>(EntryTable<R> table, Map<String, SortedMap<String, String>> base, BackNotes notes) {

    private static final String FIRST = "default";

    /** The texts of a row by the catalogue's key. */
    private record Row(SortedMap<String, String> cells) {

        String cell(String key) {
            return cells.getOrDefault(key, "");
        }
    }

    /** The rows of its sheet as they come back; as they were written where the sheet is gone. */
    TabRows read(List<Sheet> sheets, boolean single) {
        List<String> headings = table.fields().stream()
                .filter(field -> !field.key().isEmpty())
                .map(EntryTable.Field::heading)
                .toList();
        Optional<TabRows> found = TabRows.find(sheets, headings);
        if (found.isEmpty()) {
            missing(sheets, headings, single);
            TabRows none = new TabRows(
                    Sheet.of(table.title(), false, false, List.of(), List.of()),
                    1,
                    Map.of(),
                    new LinkedHashMap<>(base),
                    Map.of());
            return none;
        }
        TabRows tab = found.get();
        tab.otherColumns(table.fields().stream().map(EntryTable.Field::heading).toList(), notes);
        for (Sheet.Line line : tab.lines()) {
            row(tab, line);
        }
        return tab;
    }

    private void missing(List<Sheet> sheets, List<String> headings, boolean single) {
        Optional<Sheet> named = sheets.stream()
                .filter(sheet -> sheet.name().equals(table.title()))
                .findFirst();
        if (named.isPresent()) {
            String texts = named.get().rows().values().stream()
                    .flatMap(line -> line.cells().stream())
                    .map(GridCell::text)
                    .collect(Collectors.joining("\n", "\n", "\n"));
            String gone = headings.stream()
                    .filter(heading -> !texts.contains("\n" + heading + "\n"))
                    .collect(Collectors.joining("', '"));
            notes.fault(table.title(), "no row with the headings '" + gone + "'", "the headings as written", "");
        } else if (!single) {
            notes.untaken("The sheet " + table.title(), "", "it is gone, and all that it told stays as it is");
        }
    }

    private void row(TabRows tab, Sheet.Line line) {
        SortedMap<String, String> cells = new TreeMap<>();
        int before = notes.faults().size();
        for (EntryTable.Field<R> field : table.fields()) {
            String text = tab.text(line, field.heading(), notes);
            String at = tab.at(line.number(), field.heading());
            if (field.isCondition() && !text.isEmpty() && !ConditionText.isCondition(text)) {
                notes.fault(at, "'" + text + "'", LineRows.CONDITION, "");
            }
            if (field.key().equals(FIRST)
                    && !text.isEmpty()
                    && !Words.is(Words.Saying.MARK, text)
                    && !Words.is(Words.Saying.BLANK, text)) {
                notes.fault(at, "'" + text + "'", "'x', or nothing", "");
            }
            FamilyRows.put(cells, field.keyOrTells(), field.isCondition() ? ConditionText.ordered(text) : text);
        }
        if (cells.isEmpty()) {
            return;
        }
        String name = table.name(cells);
        SortedMap<String, String> was = base.getOrDefault(name, new TreeMap<>());
        told(tab, line, cells, was);
        boolean named = table.fields().stream()
                .filter(field -> field.key().equals("option") || field.key().equals(table.nameKey()))
                .allMatch(field -> cells.containsKey(field.key()));
        if (!named || tab.numbers().put(name, line.number()) != null) {
            String found = named ? "'" + name + "' a second time" : "a row without a name";
            notes.fault(tab.at(line.number(), table.heading(table.nameKey())), found, "each by its name, once", "");
        } else if (notes.faults().size() == before) {
            tab.rows().put(name, cells);
        } else if (!was.isEmpty()) {
            tab.rows().put(name, was);
        }
    }

    /** What only tells, and was written over. */
    private void told(TabRows tab, Sheet.Line line, SortedMap<String, String> cells, SortedMap<String, String> was) {
        table.fields().stream().filter(field -> field.key().isEmpty()).forEach(field -> {
            String text = cells.getOrDefault(field.keyOrTells(), "");
            if (!text.equals(was.getOrDefault(field.keyOrTells(), ""))
                    && tab.columns().containsKey(field.heading())) {
                notes.untaken(
                        tab.at(line.number(), field.heading()),
                        text,
                        "the words follow from the condition, which stands in a column of its own");
            }
        });
    }

    /** What is other in the rows than before. */
    List<EntryEdit> edits(Map<String, SortedMap<String, String>> before, Map<String, SortedMap<String, String>> after) {
        List<EntryEdit> edits = new ArrayList<>();
        Map<String, Row> known = new LinkedHashMap<>();
        before.forEach((name, cells) -> known.put(name, new Row(cells)));
        Map<String, Row> now = new LinkedHashMap<>();
        after.forEach((name, cells) -> now.put(name, new Row(cells)));
        if (table.what() == What.VALUE) {
            options(known, now, edits);
        }
        entries(known, now, edits);
        return edits;
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

    /** What rows of one option say against one another. */
    void contradictions(TabRows tab) {
        Map<String, Row> mine = new LinkedHashMap<>();
        tab.rows().forEach((name, cells) -> mine.put(name, new Row(cells)));
        Map<String, Row> was = new LinkedHashMap<>();
        base.forEach((name, cells) -> was.put(name, new Row(cells)));
        Map<String, Row> options = optionRows(mine, optionRows(was, Map.of()));
        Map<String, String> first = new TreeMap<>();
        mine.forEach((name, row) -> {
            String option = row.cell("option");
            Row all = options.getOrDefault(option, row);
            for (String key : List.of("asks", "choose")) {
                String before = base.getOrDefault(name, new TreeMap<>()).getOrDefault(key, "");
                if (!row.cell(key).equals(before) && !row.cell(key).equals(all.cell(key))) {
                    String because = "another row of option " + option + " says '" + all.cell(key) + "'";
                    notes.untaken(tab.at(name, table.heading(key)), row.cell(key), because);
                }
            }
            if (!row.cell(FIRST).isEmpty() && first.put(option, name) != null) {
                notes.fault(tab.at(name, table.heading(FIRST)), "a second mark", "one value offered first", "");
            }
        });
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
            Row option = options.computeIfAbsent(name, any -> new Row(new TreeMap<>()));
            for (String key : List.of("asks", "choose")) {
                String text = value.cell(key);
                if (!text.isEmpty()
                        && (option.cell(key).isEmpty()
                                || (known != null && option.cell(key).equals(known.cell(key))))) {
                    option.cells().put(key, text);
                }
            }
            if (Words.is(Words.Saying.MARK, value.cell(FIRST))) {
                option.cells().put(FIRST, value.cell("value"));
            }
        });
        return options;
    }
}
