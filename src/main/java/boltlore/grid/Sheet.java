package boltlore.grid;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One sheet: rows with something in them, in their order.
 *
 * @param name as its tab says
 * @param hidden whether the tab is hidden
 * @param filtered whether a filter was left on, which hides rows without saying that they are not wanted
 * @param rows by number from 1; empty rows are left out
 * @param merged cells that are one
 */
public record Sheet(String name, boolean hidden, boolean filtered, TreeMap<Integer, Line> rows, List<Merged> merged) {

    /**
     * A row.
     *
     * @param number from 1, as spreadsheet programs count
     * @param hidden whether it is hidden
     * @param cells from column A on
     */
    public record Line(int number, boolean hidden, List<GridCell> cells) {

        public Line {
            cells = List.copyOf(cells);
        }

        /** The cell in that column, from 0; an empty one beyond the last. */
        public GridCell cell(int column) {
            return column < cells.size() ? cells.get(column) : GridCell.EMPTY;
        }

        boolean isEmpty() {
            return cells.stream().allMatch(GridCell::isEmpty);
        }
    }

    /** A block of merged cells: rows from 1, columns from 0, both ends included. */
    public record Merged(int firstRow, int firstColumn, int lastRow, int lastColumn) {

        public boolean holds(int row, int column) {
            return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
        }
    }

    /** A sheet of these rows; those without anything in them are passed over. */
    public static Sheet of(String name, boolean hidden, boolean filtered, List<Line> lines, List<Merged> merged) {
        TreeMap<Integer, Line> rows = new TreeMap<>();
        lines.stream().filter(line -> !line.isEmpty()).forEach(line -> rows.put(line.number(), line));
        return new Sheet(name, hidden, filtered, rows, List.copyOf(merged));
    }

    /** The cell there, row from 1, column from 0. */
    public GridCell cell(int row, int column) {
        Line line = rows.get(row);
        return line == null ? GridCell.EMPTY : line.cell(column);
    }

    /** The block that this cell is part of. */
    public Optional<Merged> mergedAt(int row, int column) {
        return merged.stream().filter(block -> block.holds(row, column)).findFirst();
    }

    /** The cell there, or the one whose block covers it. */
    public GridCell shown(int row, int column) {
        GridCell own = cell(row, column);
        return own.isEmpty()
                ? mergedAt(row, column)
                        .map(block -> cell(block.firstRow(), block.firstColumn()))
                        .orElse(own)
                : own;
    }

    /** One beyond the last column with something in it. */
    public int width() {
        return rows.values().stream()
                .mapToInt(line -> line.cells().size())
                .max()
                .orElse(0);
    }

    /** 'C7': column from 0, row from 1. */
    public static String address(int row, int column) {
        return letters(column) + row;
    }

    /** 'A' for 0, 'AA' for 26. */
    public static String letters(int column) {
        String last = Character.toString((char) ('A' + column % 26));
        return column < 26 ? last : letters(column / 26 - 1) + last;
    }
}
