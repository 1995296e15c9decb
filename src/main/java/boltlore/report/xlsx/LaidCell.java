package boltlore.report.xlsx;

import boltlore.report.Cell;

/**
 * A cell at its place in a row of the grid.
 *
 * @param span columns of the grid that it covers, at least 1
 * @param lead bold words before the cell's text, mostly empty
 */
record LaidCell(int column, int span, Face face, Cell cell, String lead) {

    static LaidCell of(int column, int span, Face face, Cell cell) {
        return new LaidCell(column, span, face, cell, "");
    }
}
