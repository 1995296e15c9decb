package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Reads all lists of a workbook. */
final class Lists {

    private Lists() {}

    /** Every table of a sheet with what was read from it. */
    static List<TableRead> read(Sheet sheet, Mapping mapping, boolean commaLikely) {
        List<TableRead> tables = TableFinder.find(sheet).stream()
                .map(table -> read(table, mapping, commaLikely))
                .toList();
        return withRest(sheet, tables);
    }

    /** What stands above the headings belongs to no table, and is told with the first. */
    private static List<TableRead> withRest(Sheet sheet, List<TableRead> tables) {
        List<TableRead> all = new ArrayList<>(tables);
        if (!tables.isEmpty()) {
            int first = tables.stream()
                    .mapToInt(read -> read.table().firstHead())
                    .min()
                    .orElse(0);
            List<TableRead.Left> left = new ArrayList<>();
            sheet.rows()
                    .headMap(first)
                    .values()
                    .forEach(line -> left.add(new TableRead.Left(
                            line.number(),
                            line.cells().stream()
                                    .filter(cell -> !cell.isEmpty())
                                    .map(GridCell::text)
                                    .collect(Collectors.joining(" | ")),
                            "above the headings")));
            left.addAll(tables.get(0).left());
            all.set(0, tables.get(0).with(left));
        }
        return all;
    }

    private static TableRead read(Table table, Mapping mapping, boolean commaLikely) {
        boolean comma = decimalComma(table, commaLikely);
        Relations relations = new Relations(table, comma);
        List<Column> columns = mapping.columns(table, ColumnRoles.of(table, relations, comma));
        return new RowReader(table, columns, relations, comma, mapping.given()).read();
    }

    /** Whether numbers that are written as text have a decimal comma. */
    private static boolean decimalComma(Table table, boolean likely) {
        int comma = table.lines().stream()
                .flatMap(line -> table.columns().mapToObj(line::cell))
                .filter(GridCell::isText)
                .filter(cell -> cell.text().length() < 20)
                .mapToInt(cell -> Amount.commaOrPoint(cell.text()))
                .sum();
        return comma == 0 ? likely : comma > 0;
    }
}
