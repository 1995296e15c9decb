package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Formula;
import boltlore.report.Row;
import boltlore.report.Row.RowKind;
import boltlore.report.Utf8;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Sums over rows of a table: SUM over their ranges, and SUMPRODUCT where they must match a key. */
final class RowSums {

    /** SUM takes 255 arguments at most (a limit that Excel documents). */
    private static final int MOST_ARGUMENTS = 200;

    private final Addresses addresses;
    /** A sum for each group of a long table would else look through all its rows for each. */
    private final IdentityHashMap<LaidTable, Map<String, List<RowRun>>> groups = new IdentityHashMap<>();

    RowSums(Addresses addresses) {
        this.addresses = addresses;
    }

    Utf8 append(Utf8 xml, Formula formula, Addresses.Here here) {
        if (formula instanceof Formula.MatchSum sum) {
            return match(xml, sum, here);
        }
        LaidTable table = addresses.table("", "", here);
        if (formula instanceof Formula.ColumnSum sum) {
            return sum(xml, table.column(sum.column()), plain(table, sum.groups()));
        }
        int column = table.column(((Formula.SubtotalSum) formula).column());
        return sum(xml, column, runs(table, RowSums::isGroupSubtotal));
    }

    private static boolean isGroupSubtotal(Row row) {
        return row.kind() == RowKind.SUBTOTAL && !row.group().isEmpty();
    }

    private List<RowRun> plain(LaidTable table, List<String> some) {
        if (some.size() == 1) {
            return groups.computeIfAbsent(table, RowRun::plainByGroup).getOrDefault(some.get(0), List.of());
        }
        return runs(table, row -> row.isPlain() && (some.isEmpty() || some.contains(row.group())));
    }

    private static List<RowRun> runs(LaidTable table, Predicate<Row> counted) {
        return RowRun.of(table.table().rows(), table.firstRow(), counted);
    }

    private static Utf8 sum(Utf8 xml, int column, List<RowRun> runs) {
        if (runs.isEmpty()) {
            return xml.append('0');
        }
        int each = 1;
        while (each * MOST_ARGUMENTS < runs.size()) {
            each *= MOST_ARGUMENTS;
        }
        xml.append("SUM(");
        for (int i = 0; i < runs.size(); i += each) {
            if (i > 0) {
                xml.append(',');
            }
            if (each == 1) {
                Ref.appendDown(xml, column, runs.get(i).first(), runs.get(i).last());
            } else {
                sum(xml, column, runs.subList(i, Math.min(runs.size(), i + each)));
            }
        }
        return xml.append(')');
    }

    /** Compared cell by cell, because SUMIF would take a text such as '&gt;5' or '*' for a rule of its own. */
    private Utf8 match(Utf8 xml, Formula.MatchSum sum, Addresses.Here here) {
        LaidTable table = addresses.table(sum.page(), sum.table(), here);
        String sheet = addresses.sheetPrefix(sum.page(), here);
        int keys = table.column(sum.keyColumn());
        int values = table.column(sum.column());
        String sign = "";
        for (RowRun run :
                compared(table.table().rows(), table.firstRow(), table.table().column(sum.keyColumn()))) {
            xml.append(sign).append("SUMPRODUCT(--(").append(sheet);
            Ref.appendDown(xml, keys, run.first(), run.last()).append('=');
            addresses.append(xml, sum.key(), here).append("),").append(sheet);
            Ref.appendDown(xml, values, run.first(), run.last()).append(')');
            sign = "+";
        }
        return xml;
    }

    /** From the first plain row to the last: all in one where nothing but plain rows has a key there. */
    private static List<RowRun> compared(List<Row> rows, int firstRow, int keyColumn) {
        int first = 0;
        while (first < rows.size() && !rows.get(first).isPlain()) {
            first++;
        }
        int last = rows.size();
        while (last > first && !rows.get(last - 1).isPlain()) {
            last--;
        }
        List<Row> span = rows.subList(first, last);
        boolean blankElsewhere =
                span.stream().allMatch(row -> row.isPlain() || row.cells().get(keyColumn) == Cell.EMPTY);
        return RowRun.of(span, firstRow + first, blankElsewhere ? row -> true : Row::isPlain);
    }
}
