package boltlore.sheets;

import boltlore.sheets.Row.RowKind;
import java.util.ArrayList;
import java.util.List;

/** Writes a {@link Table} down: first its columns, then its rows from top to bottom. */
public final class TableBuilder {

    private final String name;
    private final List<Column> columns = new ArrayList<>();
    private final List<RowBuilder> rows = new ArrayList<>();
    private String group = "";

    TableBuilder(String name) {
        this.name = name;
    }

    public TableBuilder columns(Column... all) {
        columns.addAll(List.of(all));
        return this;
    }

    /** A group heading; the plain rows that follow count in this group. */
    public TableBuilder group(String groupName, String words) {
        group = groupName;
        add(RowKind.GROUP, "", words);
        return this;
    }

    /** Plain rows that follow count in this group, without a heading. */
    public TableBuilder countIn(String groupName) {
        group = groupName;
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
        return new Table(name, columns, rows.stream().map(RowBuilder::build).toList());
    }

    private RowBuilder add(RowKind kind, String key, String words) {
        return add(kind, key, group, words);
    }

    private RowBuilder add(RowKind kind, String key, String groupName, String words) {
        RowBuilder row = new RowBuilder(name, columns, kind, key, groupName, words);
        rows.add(row);
        return row;
    }
}
