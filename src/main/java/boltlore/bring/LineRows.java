package boltlore.bring;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Nearest;
import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads the lines of a workbook that comes back.
 *
 * @param base the lines as the workbook was written
 * @param places positions that a line may stand at
 * @param offered values by option that a line may be marked with
 */
record LineRows(
        TabRows tab,
        Catalogue catalogue,
        Map<String, SortedMap<String, String>> base,
        SortedSet<String> places,
        SortedMap<String, SortedSet<String>> offered,
        BackNotes notes) {

    static final List<String> HEADINGS =
            List.of(FamilySheet.LINE, FamilySheet.POSITION, FamilySheet.PART, FamilySheet.QUANTITY);

    private static final Map<String, String> TELLING = Map.of(FamilySheet.NAME, "=name", FamilySheet.UNIT, "=unit");

    /** Where a cell of the catalogue's key stands. */
    static String heading(String key) {
        return switch (key) {
            case "position" -> FamilySheet.POSITION;
            case "part" -> FamilySheet.PART;
            case "quantity" -> FamilySheet.QUANTITY;
            case "when" -> FamilySheet.OTHERWISE;
            case "note" -> FamilySheet.NOTE;
            default -> FamilySheet.LINE;
        };
    }

    /** Fills the tab. A row with a fault stays as it was, so that all of them are found at once. */
    void read() {
        columns();
        for (Sheet.Line line : tab.lines()) {
            String name = tab.text(line, FamilySheet.LINE, notes);
            if (name.isEmpty() && tab.text(line, FamilySheet.PART, notes).isEmpty()) {
                notes.untaken(
                        tab.at(line.number(), FamilySheet.LINE),
                        "",
                        "the row has neither the name of a line nor a part");
            } else if (name.isEmpty() || tab.numbers().put(name, line.number()) != null) {
                String found = name.isEmpty() ? "a row without a name" : "line '" + name + "' a second time";
                notes.fault(tab.at(line.number(), FamilySheet.LINE), found, "each line by its name, once", "");
            } else {
                int before = notes.faults().size();
                SortedMap<String, String> cells = cells(line, name);
                if (notes.faults().size() == before) {
                    tab.rows().put(name, cells);
                } else if (base.containsKey(name)) {
                    tab.rows().put(name, base.get(name));
                }
            }
        }
    }

    private void columns() {
        List<String> known = new ArrayList<>(HEADINGS);
        known.addAll(List.of(FamilySheet.NAME, FamilySheet.UNIT, FamilySheet.NOTE, FamilySheet.OTHERWISE));
        List<String> needed = new ArrayList<>(List.of(FamilySheet.OTHERWISE));
        offered.forEach((option, values) -> values.forEach(value -> needed.add(option + FamilySheet.IS + value)));
        known.addAll(needed);
        for (String heading : tab.columns().keySet()) {
            if (heading.contains(FamilySheet.IS) && !needed.contains(heading)) {
                notes.fault(
                        tab.at(tab.head(), heading),
                        "the heading '" + heading + "'",
                        "an option and value of the family",
                        Nearest.advice(heading, needed, "New ones have a row in the sheet Options."));
                known.add(heading);
            }
        }
        tab.otherColumns(known, notes);
        if (!tab.columns().containsKey(FamilySheet.OTHERWISE)) {
            notes.fault(
                    tab.at(tab.head(), FamilySheet.LINE),
                    "no column '" + FamilySheet.OTHERWISE + "'",
                    "the column, with what stood in it",
                    "");
        }
        if (!tab.columns().containsKey(FamilySheet.NOTE)) {
            notes.untaken(tab.at(tab.head(), FamilySheet.LINE), "", "the column 'Note' is gone, and notes stay");
        }
    }

    private SortedMap<String, String> cells(Sheet.Line line, String name) {
        SortedMap<String, String> cells = new TreeMap<>();
        SortedMap<String, String> before = base.getOrDefault(name, new TreeMap<>());
        place(line, cells);
        part(line, before, cells);
        quantity(line, cells);
        when(line, before).ifPresent(when -> FamilyRows.put(cells, "when", when));
        FamilyRows.put(
                cells,
                "note",
                tab.columns().containsKey(FamilySheet.NOTE)
                        ? tab.text(line, FamilySheet.NOTE, notes)
                        : before.getOrDefault("note", ""));
        return cells;
    }

    private void place(Sheet.Line line, SortedMap<String, String> cells) {
        String position = tab.text(line, FamilySheet.POSITION, notes);
        if (!places.contains(position)) {
            notes.fault(
                    tab.at(line.number(), FamilySheet.POSITION),
                    "position '" + position + "'",
                    "a position of the family",
                    Nearest.advice(position, places, "New ones have a row in the sheet Positions."));
        }
        FamilyRows.put(cells, "position", position);
    }

    private void part(Sheet.Line line, SortedMap<String, String> before, SortedMap<String, String> cells) {
        String part = tab.text(line, FamilySheet.PART, notes);
        FamilyRows.put(cells, "part", part);
        List<String> known =
                catalogue.parts().keySet().stream().map(PartNumber::text).toList();
        if (!known.contains(part)) {
            notes.fault(
                    tab.at(line.number(), FamilySheet.PART),
                    "part '" + part + "'",
                    "a part of the catalogue",
                    Nearest.advice(part, known, "'boltlore new part' makes one."));
            return;
        }
        SortedMap<String, String> now = new TreeMap<>();
        FamilyRows.put(now, "=name", catalogue.part(new PartNumber(part)).name().english());
        FamilyRows.put(now, "=unit", catalogue.part(new PartNumber(part)).unit());
        TELLING.forEach((heading, key) -> {
            String text = tab.text(line, heading, notes);
            boolean own = text.equals(before.getOrDefault(key, "")) || text.equals(now.getOrDefault(key, ""));
            if (!own && (!text.isEmpty() || !before.isEmpty()) && tab.columns().containsKey(heading)) {
                notes.untaken(
                        tab.at(line.number(), heading),
                        text,
                        "it is of the part " + part + ", and is changed in the file of that part");
            }
        });
    }

    private void quantity(Sheet.Line line, SortedMap<String, String> cells) {
        GridCell cell = line.cell(tab.columns().getOrDefault(FamilySheet.QUANTITY, 0));
        Optional<BigDecimal> quantity = Amount.of(cell, false)
                .or(() -> Amount.of(cell, true))
                .filter(amount -> amount.unit().isEmpty() && amount.number().signum() > 0)
                .map(Amount::number);
        if (quantity.isEmpty()) {
            String at = tab.at(line.number(), FamilySheet.QUANTITY);
            notes.fault(at, "'" + cell.text() + "'", "a number above 0", "");
        }
        quantity.ifPresent(number -> cells.put("quantity", FamilySheet.plain(number)));
    }

    /** The condition that the row's marks say, or the one that stands in words of the catalogue. */
    private Optional<String> when(Sheet.Line line, SortedMap<String, String> before) {
        Map<String, SortedSet<String>> marks = new TreeMap<>();
        offered.forEach((option, values) -> {
            SortedSet<String> marked = new TreeSet<>();
            values.stream()
                    .filter(value -> isMarked(line, option, value, before))
                    .forEach(marked::add);
            if (!marked.isEmpty()) {
                marks.put(option, marked);
            }
        });
        String otherwise = tab.text(line, FamilySheet.OTHERWISE, notes);
        String at = tab.at(line.number(), FamilySheet.OTHERWISE);
        if (!otherwise.isEmpty() && !marks.isEmpty()) {
            notes.fault(at, "marks and a condition", "one of the two", "");
            return Optional.empty();
        }
        if (!otherwise.isEmpty() && !ConditionText.isCondition(otherwise)) {
            notes.fault(at, "'" + otherwise + "'", CONDITION, "");
            return Optional.empty();
        }
        return Optional.of(
                otherwise.isEmpty() ? ConditionText.flat(FamilySheet.json(marks)) : ConditionText.ordered(otherwise));
    }

    static final String CONDITION = "a condition in { }, such as {\"drive-side\": \"left\"}";

    /** A column that is gone takes no marks away in silence. */
    private boolean isMarked(Sheet.Line line, String option, String value, SortedMap<String, String> before) {
        String heading = option + FamilySheet.IS + value;
        if (!tab.columns().containsKey(heading)) {
            if (ConditionText.isMarked(before.getOrDefault("when", ""), option, value)) {
                notes.fault(
                        tab.at(line.number(), FamilySheet.LINE),
                        "no column '" + heading + "', which had a mark here",
                        "the column, or the condition without it under '" + FamilySheet.OTHERWISE + "'",
                        "");
            }
            return false;
        }
        String mark = tab.text(line, heading, notes);
        boolean marked = Words.is(Words.Saying.MARK, mark);
        if (!marked && !mark.isEmpty() && !Words.is(Words.Saying.BLANK, mark)) {
            notes.fault(tab.at(line.number(), heading), "'" + mark + "'", "'x', or nothing", "");
        }
        return marked;
    }
}
