package boltlore.report;

import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A table's columns, each declared once with how its value is taken from what a row is about. A value that is null
 * leaves its cell empty.
 *
 * @param <R> what a row is about
 */
public final class TableSpec<R> {

    /** A column and where its cells come from. */
    private record Taken<R>(Column column, Function<R, Cell> cell) {}

    private final String name;
    private final List<Taken<R>> columns = new ArrayList<>();
    private final Map<String, Function<R, String>> remarks = new LinkedHashMap<>();
    private final Map<String, Function<R, String>> codes = new LinkedHashMap<>();

    private boolean onPaper = true;

    private TableSpec(String name) {
        this.name = name;
    }

    /**
     * A table without columns yet.
     *
     * @param name unique on the page, letters, digits and hyphens, stable
     */
    public static <R> TableSpec<R> named(String name) {
        return new TableSpec<>(name);
    }

    public TableSpec<R> text(String key, String heading, Function<R, @Nullable String> value) {
        return text(key, heading, Column.USUAL_WIDEST, value);
    }

    /**
     * A column of text.
     *
     * @param widest characters after which text goes on in the next line
     */
    public TableSpec<R> text(String key, String heading, int widest, Function<R, @Nullable String> value) {
        return column(Column.text(key, heading).atMost(widest), row -> orEmpty(value.apply(row), Cell::of));
    }

    /**
     * A column of names that stand in the catalogue in several languages.
     *
     * @param widest characters after which text goes on in the next line
     */
    public TableSpec<R> said(String key, String heading, int widest, Function<R, @Nullable Wording> value) {
        return column(Column.text(key, heading).atMost(widest), row -> orEmpty(value.apply(row), Cell::of));
    }

    public TableSpec<R> whole(String key, String heading, String unit, Function<R, @Nullable Number> value) {
        return number(Column.whole(key, heading).in(unit), value);
    }

    /**
     * A column of decimals.
     *
     * @param scale digits after the decimal sign
     */
    public TableSpec<R> decimal(
            String key, String heading, String unit, int scale, Function<R, @Nullable BigDecimal> value) {
        return number(Column.decimal(key, heading, scale).in(unit), value::apply);
    }

    /** With as many digits as it has. */
    public TableSpec<R> quantity(String key, String heading, String unit, Function<R, @Nullable Number> value) {
        return number(Column.quantity(key, heading).in(unit), value);
    }

    public TableSpec<R> money(String key, String heading, Currency currency, Function<R, @Nullable BigDecimal> value) {
        return number(Column.money(key, heading, currency), value::apply);
    }

    public TableSpec<R> percent(String key, String heading, int scale, Function<R, @Nullable BigDecimal> value) {
        return number(Column.percent(key, heading, scale), value::apply);
    }

    public TableSpec<R> date(String key, String heading, Function<R, @Nullable LocalDate> value) {
        return column(Column.date(key, heading), row -> orEmpty(value.apply(row), Cell::of));
    }

    /** What a program knows a row by, beside the words that people read; empty where there is none. */
    public TableSpec<R> code(String key, Function<R, String> code) {
        codes.put(key, code);
        return this;
    }

    /** What is shown where somebody points at a cell of that column in a workbook; on no paper. */
    public TableSpec<R> remark(String column, Function<R, String> text) {
        remarks.put(column, text);
        return this;
    }

    /** Boxes for the pen: {@link Column#tick}, {@link Column#blank}, {@link Column#signature}. */
    public TableSpec<R> box(Column byHand) {
        return column(byHand, row -> Cell.EMPTY);
    }

    /** Any other column: a live formula, a look of its own. */
    public TableSpec<R> column(Column column, Function<R, Cell> cell) {
        columns.add(new Taken<>(onPaper ? column : column.besideThePaper(), cell));
        return this;
    }

    /** Columns that follow are not printed: they stand beside the paper, on the screen, and in the data. */
    public TableSpec<R> besideThePaper() {
        onPaper = false;
        return this;
    }

    /** The table with these rows. */
    public TableBuilder of(Iterable<? extends R> rows) {
        TableBuilder table = empty();
        rows.forEach(row -> add(table, "", row));
        return table;
    }

    /** The columns alone, where rows come in groups or are referred to; {@link #add} fills it. */
    public TableBuilder empty() {
        return Table.named(name).columns(columns.stream().map(Taken::column).toArray(Column[]::new));
    }

    /** One more row, which formulas may refer to by its key. */
    public RowBuilder add(TableBuilder table, String key, R about) {
        RowBuilder row = table.row(key);
        columns.forEach(taken -> row.put(taken.column().key(), taken.cell().apply(about)));
        remarks.forEach((column, text) -> row.remark(column, text.apply(about)));
        codes.forEach((codeKey, code) -> row.code(codeKey, code.apply(about)));
        return row;
    }

    private TableSpec<R> number(Column column, Function<R, @Nullable Number> value) {
        return column(column, row -> orEmpty(value.apply(row), TableSpec::exact));
    }

    private static Cell exact(Number number) {
        return Cell.of(number instanceof BigDecimal decimal ? decimal : new BigDecimal(number.toString()));
    }

    private static <T> Cell orEmpty(@Nullable T value, Function<T, Cell> cell) {
        return value == null ? Cell.EMPTY : cell.apply(value);
    }
}
