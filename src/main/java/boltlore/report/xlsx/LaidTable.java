package boltlore.report.xlsx;

import boltlore.report.Table;

/** @param firstRow of the grid that the table's first row stands in; its heading stands in the row above */
record LaidTable(Table table, int firstRow, Spans spans) {

    int headingRow() {
        return firstRow - 1;
    }

    int column(String key) {
        return spans.start(table.column(key));
    }

    int lastRow() {
        return firstRow + table.rows().size() - 1;
    }
}
