package boltlore.sheets;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Columns and rows.
 *
 * @param name unique on the page, letters, digits and hyphens, stable: formulas, CSV file names and readers of the JSON
 *     go by it
 */
public record Table(String name, List<Column> columns, List<Row> rows) implements Block {

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        if (!name.matches("[A-Za-z0-9]+(-[A-Za-z0-9]+)*")) {
            throw new IllegalArgumentException("Not a name for a table: '" + name + "'");
        }
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("Table '" + name + "' has no column");
        }
        unique(name, "columns", columns.stream().map(Column::key).toList());
        unique(
                name,
                "rows",
                rows.stream().map(Row::key).filter(key -> !key.isEmpty()).toList());
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException("Table '" + name + "' has " + columns.size()
                        + " columns, but a row of " + row.cells().size());
            }
        }
    }

    public static TableBuilder named(String name) {
        return new TableBuilder(name);
    }

    /** Place of the column from the left, from 0. */
    public int column(String key) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().equals(key)) {
                return i;
            }
        }
        throw new IllegalArgumentException("Table '" + name + "' has no column '" + key + "', only "
                + columns.stream().map(Column::key).toList());
    }

    /** Place of the row from the top, from 0. */
    public int row(String key) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).key().equals(key)) {
                return i;
            }
        }
        throw new IllegalArgumentException("Table '" + name + "' has no row '" + key + "'");
    }

    /** Whether all rows are plain, so that nothing but the columns needs to be written to a machine. */
    public boolean isPlain() {
        return rows.stream().allMatch(Row::isPlain);
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.table(this);
    }

    private static void unique(String table, String what, List<String> keys) {
        Set<String> seen = new HashSet<>();
        for (String key : keys) {
            if (!seen.add(key)) {
                throw new IllegalArgumentException("Table '" + table + "' has two " + what + " '" + key + "'");
            }
        }
    }
}
