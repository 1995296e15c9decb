package boltlore.report;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Columns and rows; a value, as a record is. What formulas refer to is found by its key or its group at once. */
public final class Table implements Block {

    /** How paper shows a table. */
    public enum OnPaper {
        ROW_BY_ROW(1),
        /** Two rows side by side, each group's first half beside its second: for narrow lists without formulas. */
        IN_PAIRS(2),
        /** Four rows side by side likewise, or as many as there is room for: for lists of a number and a tick. */
        IN_FOURS(4),
        /** Not at all: it stands below what is printed of its page, on the screen only, and nothing printed follows it. */
        BELOW(1);

        private final int abreast;

        OnPaper(int abreast) {
            this.abreast = abreast;
        }
    }

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9]+(-[A-Za-z0-9]+)*");

    private final String name;
    private final String id;
    private final Map<String, String> about;
    private final List<Column> columns;
    private final List<Row> rows;
    private final OnPaper onPaper;
    private final Map<String, Integer> columnsByKey;
    private final Map<String, Integer> rowsByKey;
    private final Set<String> groups = new HashSet<>();

    /** @param about what sets this table apart from others of its name in the same report: batch 4 */
    public Table(String name, Map<String, String> about, List<Column> columns, List<Row> rows) {
        this(name, about, columns, rows, OnPaper.ROW_BY_ROW);
    }

    /** @param onPaper how a workbook and its print show it; programs read one row below the other all the same */
    public Table(String name, Map<String, String> about, List<Column> columns, List<Row> rows, OnPaper onPaper) {
        this.name = name;
        this.onPaper = onPaper;
        this.about = Collections.unmodifiableMap(new LinkedHashMap<>(about));
        this.id = about.isEmpty() ? name : name + "-" + String.join("-", this.about.values());
        this.columns = List.copyOf(columns);
        this.rows = List.copyOf(rows);
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("Not a name for a table: '" + name + "'");
        }
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("Table '" + name + "' has no column");
        }
        this.columnsByKey = places("columns", this.columns, Column::key);
        this.rowsByKey = places("rows", this.rows, Row::key);
        this.rows.forEach(this::check);
    }

    private void check(Row row) {
        if (row.cells().size() != columns.size()) {
            throw new IllegalArgumentException("Table '" + name + "' has " + columns.size() + " columns, but a row of "
                    + row.cells().size());
        }
        groups.add(row.group());
    }

    public static TableBuilder named(String name) {
        return new TableBuilder(name);
    }

    public String name() {
        return name;
    }

    /** Name with what sets the table apart: unique on its page, where several may have one name. */
    public String id() {
        return id;
    }

    public Map<String, String> about() {
        return about;
    }

    public List<Column> columns() {
        return columns;
    }

    public List<Row> rows() {
        return rows;
    }

    public OnPaper onPaper() {
        return onPaper;
    }

    /** Rows that paper has side by side at most: 1, 2 or 4. */
    public int abreast() {
        return onPaper.abreast;
    }

    public boolean isPrinted() {
        return onPaper != OnPaper.BELOW;
    }

    /** Place of the column from the left, from 0. */
    public int column(String key) {
        Integer place = columnsByKey.get(key);
        if (place == null) {
            throw new IllegalArgumentException("Table '" + name + "' has no column '" + key + "', only "
                    + columns.stream().map(Column::key).toList());
        }
        return place;
    }

    /** Place of the row from the top, from 0. */
    public int row(String key) {
        Integer place = rowsByKey.get(key);
        if (place == null) {
            throw new IllegalArgumentException("Table '" + name + "' has no row '" + key + "'");
        }
        return place;
    }

    /** Whether any row counts in that group. */
    public boolean hasGroup(String group) {
        return groups.contains(group);
    }

    /** Whether all rows are plain, so that nothing but the columns needs to be written to a machine. */
    public boolean isPlain() {
        return rows.stream().allMatch(Row::isPlain);
    }

    @Override
    public <R> R as(Cases<R> cases) {
        return cases.table(this);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Table table
                && name.equals(table.name)
                && about.equals(table.about)
                && columns.equals(table.columns)
                && rows.equals(table.rows)
                && onPaper == table.onPaper;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, about, columns, rows, onPaper);
    }

    @Override
    public String toString() {
        return "Table[name=" + name + ", about=" + about + ", columns=" + columns + ", rows=" + rows + "]";
    }

    private <T> Map<String, Integer> places(String what, List<T> all, Function<T, String> keyOf) {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            String key = keyOf.apply(all.get(i));
            if (!key.isEmpty() && places.put(key, i) != null) {
                throw new IllegalArgumentException("Table '" + name + "' has two " + what + " '" + key + "'");
            }
        }
        return places;
    }
}
