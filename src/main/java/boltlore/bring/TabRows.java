package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * A table of the workbook as it comes back.
 *
 * @param head number of the row of headings
 * @param columns by heading, from 0
 * @param rows their cells by the catalogue's key, by name
 * @param numbers of the rows by name
 */
record TabRows(
        Sheet sheet,
        int head,
        Map<String, Integer> columns,
        Map<String, SortedMap<String, String>> rows,
        Map<String, Integer> numbers) {

    /** The first sheet with all of these headings in a row. */
    static Optional<TabRows> find(List<Sheet> sheets, List<String> headings) {
        return sheets.stream()
                .flatMap(sheet -> sheet.rows().values().stream()
                        .filter(line -> texts(line).containsAll(headings))
                        .map(line -> of(sheet, line)))
                .findFirst();
    }

    private static List<String> texts(Sheet.Line line) {
        return line.cells().stream().map(GridCell::text).toList();
    }

    private static TabRows of(Sheet sheet, Sheet.Line head) {
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (int column = 0; column < head.cells().size(); column++) {
            if (!head.cell(column).isEmpty()) {
                columns.putIfAbsent(head.cell(column).text(), column);
            }
        }
        return new TabRows(sheet, head.number(), columns, new LinkedHashMap<>(), new HashMap<>());
    }

    /** The rows below the headings. */
    Iterable<Sheet.Line> lines() {
        return sheet.rows().tailMap(head, false).values();
    }

    /** The text there; a cell that cannot be read is told, and empty. */
    String text(Sheet.Line line, String heading, BackNotes notes) {
        Integer column = columns.get(heading);
        GridCell cell = column == null ? GridCell.EMPTY : line.cell(column);
        if (cell.kind() == GridCell.Kind.UNREAD) {
            notes.fault(at(line.number(), heading), cell.text(), "a value", "Write it in plainly.");
            return "";
        }
        return cell.text();
    }

    /** 'Lines!C7'. */
    String at(int row, String heading) {
        return BackNotes.at(sheet, row, columns.getOrDefault(heading, 0));
    }

    /** Where the cell of a row stands; of a row that is gone, the headings. */
    String at(String name, String heading) {
        return at(numbers.getOrDefault(name, head), heading);
    }

    /** Tells each column that nobody reads, and in which something stands. */
    void otherColumns(List<String> known, BackNotes notes) {
        columns.forEach((heading, column) -> {
            if (!known.contains(heading)) {
                for (Sheet.Line line : lines()) {
                    if (!line.cell(column).isEmpty()) {
                        notes.untaken(
                                at(line.number(), heading),
                                line.cell(column).text(),
                                "no column '" + heading + "' comes back, nor what else stands in it");
                        return;
                    }
                }
            }
        });
        for (Sheet.Line line : lines()) {
            for (int column = 0; column < line.cells().size(); column++) {
                if (!line.cell(column).isEmpty() && !columns.containsValue(column)) {
                    notes.untaken(
                            BackNotes.at(sheet, line.number(), column),
                            line.cell(column).text(),
                            "it has no heading");
                }
            }
        }
    }
}
