package boltlore.report;

import boltlore.report.Row.RowKind;
import boltlore.report.Table.OnPaper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes a {@link Table} down: first its columns, then its rows from top to bottom. */
public final class TableBuilder {

    private final String name;
    private final List<Column> columns = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final List<RowBuilder> rows = new ArrayList<>();
    private final Map<String, String> about = new LinkedHashMap<>();
    private String group = "";
    private OnPaper onPaper = OnPaper.ROW_BY_ROW;

    TableBuilder(String name) {
        this.name = name;
    }

    public TableBuilder columns(Column... all) {
        for (Column column : all) {
            places.put(column.key(), columns.size());
            columns.add(column);
        }
        return this;
    }

    /** What sets this table apart from others of its name in the same report; part of the name of its CSV file, a member of its rows in JSON. */
    public TableBuilder about(String key, Object value) {
        about.put(key, String.valueOf(value));
        return this;
    }

    /** Two rows side by side on paper: {@link OnPaper#IN_PAIRS}. */
    public TableBuilder inPairs() {
        onPaper = OnPaper.IN_PAIRS;
        return this;
    }

    /** Four rows side by side on paper: {@link OnPaper#IN_FOURS}. */
    public TableBuilder inFours() {
        onPaper = OnPaper.IN_FOURS;
        return this;
    }

    /** On the screen only, below what is printed of the page: {@link OnPaper#BELOW}. */
    public TableBuilder belowThePaper() {
        onPaper = OnPaper.BELOW;
        return this;
    }

    /** A group heading; the plain rows that follow count in this group. */
    public TableBuilder group(String groupName, String words) {
        group = groupName;
        add(RowKind.GROUP, "", words);
        return this;
    }

    public RowBuilder row() {
        return row("");
    }

    /** A plain row that formulas refer to by its key. */
    public RowBuilder row(String key) {
        return add(RowKind.PLAIN, key, "");
    }

    /** A sub-total of the group that was begun last; its key is 'subtotal-' and the group's name. */
    public RowBuilder subtotal(String words) {
        return add(RowKind.SUBTOTAL, "subtotal-" + group, words);
    }

    /** A sub-total across the groups, which no sum of sub-totals counts again. */
    public RowBuilder subtotal(String key, String words) {
        return add(RowKind.SUBTOTAL, key, "", words);
    }

    public RowBuilder total(String key, String words) {
        return add(RowKind.TOTAL, key, "", words);
    }

    public Table build() {
        return new Table(
                name, about, columns, rows.stream().map(RowBuilder::build).toList(), onPaper);
    }

    int width() {
        return columns.size();
    }

    /** Place of the column from the left, from 0. */
    int place(String column) {
        Integer place = places.get(column);
        if (place == null) {
            throw new IllegalArgumentException("Table '" + name + "' has no column '" + column + "', only "
                    + columns.stream().map(Column::key).toList());
        }
        return place;
    }

    private RowBuilder add(RowKind kind, String key, String words) {
        return add(kind, key, group, words);
    }

    private RowBuilder add(RowKind kind, String key, String groupName, String words) {
        RowBuilder row = new RowBuilder(this, kind, key, groupName, words);
        rows.add(row);
        return row;
    }
}
