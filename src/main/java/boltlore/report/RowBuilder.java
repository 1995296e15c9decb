package boltlore.report;

import boltlore.report.Row.RowKind;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fills a row cell by cell, by the columns' keys. */
public final class RowBuilder {

    private final TableBuilder table;
    private final RowKind kind;
    private final String key;
    private final String group;
    private final String words;
    private final Cell[] cells;
    private final Map<String, String> remarks = new LinkedHashMap<>();
    private final Map<String, String> codes = new LinkedHashMap<>();

    RowBuilder(TableBuilder table, RowKind kind, String key, String group, String words) {
        this.table = table;
        this.kind = kind;
        this.key = key;
        this.group = group;
        this.words = words;
        this.cells = new Cell[table.width()];
        Arrays.fill(cells, Cell.EMPTY);
    }

    public RowBuilder put(String column, String text) {
        return put(column, Cell.of(text));
    }

    public RowBuilder put(String column, long number) {
        return put(column, Cell.of(BigDecimal.valueOf(number)));
    }

    public RowBuilder put(String column, BigDecimal number) {
        return put(column, Cell.of(number));
    }

    /** A live formula, and what it comes to as the core has computed it. */
    public RowBuilder put(String column, Formula formula, BigDecimal result) {
        return put(column, Cell.of(formula, result));
    }

    /** The sum of the column over the plain rows of this row's group; of all plain rows where it belongs to none. */
    public RowBuilder sum(String column, BigDecimal result) {
        return put(column, group.isEmpty() ? Formula.sumOf(column) : Formula.sumOf(column, group), result);
    }

    /** The sum of the column over the sub-totals of all groups. */
    public RowBuilder sumOfSubtotals(String column, BigDecimal result) {
        return put(column, Formula.sumOfSubtotals(column), result);
    }

    public RowBuilder put(String column, Cell cell) {
        cells[table.place(column)] = cell;
        return this;
    }

    /** What a program knows the row by, beside its words; nothing of it is printed. */
    public RowBuilder code(String codeKey, String code) {
        codes.put(codeKey, code);
        return this;
    }

    /** What is shown where somebody points at the cell of that column. */
    public RowBuilder remark(String column, String text) {
        remarks.put(column, text);
        return this;
    }

    Row build() {
        return new Row(kind, key, group, words, List.of(cells), remarks, codes);
    }
}
