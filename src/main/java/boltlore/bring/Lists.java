package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.List;

/** Reads all lists of a workbook. */
final class Lists {

    private Lists() {}

    /** Every table of a sheet with what was read from it. */
    static List<TableRead> read(Sheet sheet, Mapping mapping, boolean commaLikely) {
        return TableFinder.find(sheet).stream()
                .map(table -> read(table, mapping, commaLikely))
                .toList();
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
        return comma > 0 || comma == 0 && likely;
    }
}
