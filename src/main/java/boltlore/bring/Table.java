package boltlore.bring;

import boltlore.grid.GridCell;
import boltlore.grid.Sheet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table in a sheet: its headings and the rows below them.
 *
 * @param firstHead first row of its headings, from 1; equal to {@code firstRow} where it has none
 * @param firstRow first row below the headings
 * @param lastRow last row that may belong to it
 * @param firstColumn from 0
 * @param headings one a column, empty where there is none
 * @param groups the heading that stands over several columns, or empty
 * @param sure whether the headings are known words, and not only the texts above the numbers
 */
public record Table(
        Sheet sheet,
        int firstHead,
        int firstRow,
        int lastRow,
        int firstColumn,
        List<String> headings,
        List<String> groups,
        boolean sure) {

    /** Its columns, from 0 in the sheet. */
    IntStream columns() {
        return IntStream.range(firstColumn, firstColumn + headings.size());
    }

    String heading(int column) {
        return headings.get(column - firstColumn);
    }

    String group(int column) {
        return groups.get(column - firstColumn);
    }

    /** Whether the heading of its group stands right over the column, or is merged over it. */
    boolean isOver(int column) {
        return sheet.shown(firstHead, column).text().equals(group(column));
    }

    /** The rows below the headings that have something in its columns. */
    List<Sheet.Line> lines() {
        return sheet.rows().subMap(firstRow, true, Math.max(firstRow, lastRow), true).values().stream()
                .filter(line -> columns().anyMatch(column -> !line.cell(column).isEmpty()))
                .toList();
    }

    GridCell cell(int row, int column) {
        return sheet.cell(row, column);
    }

    /** 'Body!C7'. */
    String address(int row, int column) {
        return sheet.name() + '!' + Sheet.address(row, column);
    }
}
