package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.xlsx.LaidPage.LaidTable;
import boltlore.report.xlsx.LaidPage.Rows;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Sums over rows of a table: SUM over their ranges, and SUMPRODUCT where they must match a key. */
final class RowSums {

    /** SUM takes 255 arguments at most (a limit that Excel documents). */
    private static final int MOST_ARGUMENTS = 200;

    private final FormulaText formulas;
    private final IdentityHashMap<LaidTable, Map<String, List<Rows>>> groups = new IdentityHashMap<>();

    RowSums(FormulaText formulas) {
        this.formulas = formulas;
    }

    StringBuilder append(StringBuilder text, Formula formula, FormulaText.Here here) {
        if (formula instanceof Formula.MatchSum sum) {
            return match(text, sum, here);
        }
        LaidTable table = formulas.table("", "", here);
        if (formula instanceof Formula.ColumnSum sum) {
            return sum(text, FormulaText.column(table.column(sum.column())), plain(table, sum.groups()));
        }
        String column = FormulaText.column(table.column(((Formula.SubtotalSum) formula).column()));
        return sum(text, column, table.rows(RowSums::isGroupSubtotal));
    }

    private static boolean isGroupSubtotal(Row row) {
        return row.kind() == RowKind.SUBTOTAL && !row.group().isEmpty();
    }

    private List<Rows> plain(LaidTable table, List<String> some) {
        if (some.size() == 1) {
            return groups.computeIfAbsent(table, LaidTable::plainRowsByGroup).getOrDefault(some.get(0), List.of());
        }
        return table.rows(row -> row.isPlain() && (some.isEmpty() || some.contains(row.group())));
    }

    private static StringBuilder sum(StringBuilder text, String column, List<Rows> runs) {
        if (runs.isEmpty()) {
            return text.append('0');
        }
        int each = 1;
        while (each * MOST_ARGUMENTS < runs.size()) {
            each *= MOST_ARGUMENTS;
        }
        text.append("SUM(");
        for (int i = 0; i < runs.size(); i += each) {
            text.append(i > 0 ? "," : "");
            if (each == 1) {
                range(text, column, runs.get(i));
            } else {
                sum(text, column, runs.subList(i, Math.min(runs.size(), i + each)));
            }
        }
        return text.append(')');
    }

    /** The rows of one column, or the one cell. */
    private static StringBuilder range(StringBuilder text, String column, Rows rows) {
        text.append(column).append(rows.first() + 1);
        return rows.first() == rows.last()
                ? text
                : text.append(':').append(column).append(rows.last() + 1);
    }

    /** Compared cell by cell, because SUMIF would take a text such as '&gt;5' or '*' for a rule of its own. */
    private StringBuilder match(StringBuilder text, Formula.MatchSum sum, FormulaText.Here here) {
        LaidTable table = formulas.table(sum.page(), sum.table(), here);
        String keys = FormulaText.column(table.column(sum.keyColumn()));
        String values = FormulaText.column(table.column(sum.column()));
        String sign = "";
        for (Rows run : compared(table, table.table().column(sum.keyColumn()))) {
            formulas.appendSheet(text.append(sign).append("SUMPRODUCT(--("), sum.page(), here);
            formulas.append(range(text, keys, run).append('='), sum.key(), here);
            formulas.appendSheet(text.append("),"), sum.page(), here);
            range(text, values, run).append(')');
            sign = "+";
        }
        return text;
    }

    /** From the first plain row to the last: all in one where nothing but plain rows has a key there. */
    private static List<Rows> compared(LaidTable table, int keyColumn) {
        List<Rows> plain = table.rows(Row::isPlain);
        if (plain.size() < 2) {
            return plain;
        }
        Rows all = new Rows(plain.get(0).first(), plain.get(plain.size() - 1).last());
        boolean blankElsewhere =
                table.table().rows().subList(all.first() - table.firstRow(), all.last() - table.firstRow()).stream()
                        .allMatch(row -> row.isPlain() || row.cells().get(keyColumn) == Cell.EMPTY);
        return blankElsewhere ? List.of(all) : plain;
    }
}
