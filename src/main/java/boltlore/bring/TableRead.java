package boltlore.bring;

import java.util.List;

/**
 * A table as it was read.
 *
 * @param entries rows that name a part of the list
 * @param left rows that do not: headings, totals, what stands below the total or in a section that is not needed
 * @param doubts what is in doubt, in the order of rows
 */
public record TableRead(
        Table table,
        boolean decimalComma,
        List<Column> columns,
        List<Entry> entries,
        List<Left> left,
        List<Doubt> doubts) {

    /** A row that was left out, and why. */
    public record Left(int row, String text, String because) {}

    TableRead with(List<Left> others) {
        return new TableRead(table, decimalComma, columns, entries, List.copyOf(others), doubts);
    }

    /** Whether the table counts anything: a list of names alone is none to build by. */
    boolean counts() {
        return columns.stream().anyMatch(column -> column.role() == Role.QUANTITY || column.role() == Role.VALUE);
    }
}
