package boltlore.sheets.xlsx;

import boltlore.sheets.Cell;
import boltlore.sheets.Formula;
import boltlore.sheets.Row;
import boltlore.sheets.Row.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Formulas as ECMA-376 part 1, 18.17 writes them: addresses, numbers, and four functions. */
final class FormulaText {

    /** SUM takes 255 arguments at most (a limit that Excel documents). */
    private static final int MOST_ARGUMENTS = 200;

    private final Addresses addresses;

    FormulaText(Addresses addresses) {
        this.addresses = addresses;
    }

    String of(Formula formula, Addresses.Here here) {
        if (formula instanceof Formula.At at) {
            return addresses.of(at.place(), here);
        } else if (formula instanceof Formula.Fixed fixed) {
            return fixed.number().toPlainString();
        } else if (formula instanceof Formula.Sum sum) {
            return "SUM(" + joined(sum.terms(), ",", here) + ")";
        } else if (formula instanceof Formula.Product product) {
            return joined(product.factors(), "*", here);
        } else if (formula instanceof Formula.Difference difference) {
            return joined(difference.parts(), "-", here);
        } else if (formula instanceof Formula.Quotient quotient) {
            return joined(quotient.parts(), "/", here);
        } else if (formula instanceof Formula.Rounded rounded) {
            return "ROUND(" + of(rounded.formula(), here) + "," + rounded.scale() + ")";
        }
        return ofRows(formula, here);
    }

    private String ofRows(Formula formula, Addresses.Here here) {
        if (formula instanceof Formula.ColumnSum sum) {
            LaidTable table = addresses.table("", "", here);
            return sum(runs(table, table.column(sum.column()), row -> counts(row, sum.groups())));
        } else if (formula instanceof Formula.SubtotalSum sum) {
            LaidTable table = addresses.table("", "", here);
            return sum(runs(
                    table,
                    table.column(sum.column()),
                    row -> row.kind() == RowKind.SUBTOTAL && !row.group().isEmpty()));
        }
        return match((Formula.MatchSum) formula, here);
    }

    private String joined(List<Formula> parts, String sign, Addresses.Here here) {
        return parts.stream()
                .map(part -> isBare(part) ? of(part, here) : "(" + of(part, here) + ")")
                .collect(Collectors.joining(sign));
    }

    private static boolean isBare(Formula formula) {
        return !(formula instanceof Formula.Product
                || formula instanceof Formula.Difference
                || formula instanceof Formula.Quotient
                || (formula instanceof Formula.Fixed fixed && fixed.number().signum() < 0));
    }

    private static boolean counts(Row row, List<String> groups) {
        return row.isPlain() && (groups.isEmpty() || groups.contains(row.group()));
    }

    private static String sum(List<String> ranges) {
        if (ranges.isEmpty()) {
            return "0";
        } else if (ranges.size() <= MOST_ARGUMENTS) {
            return "SUM(" + String.join(",", ranges) + ")";
        }
        return sum(IntStream.range(0, (ranges.size() + MOST_ARGUMENTS - 1) / MOST_ARGUMENTS)
                .mapToObj(i -> ranges.subList(i * MOST_ARGUMENTS, Math.min(ranges.size(), (i + 1) * MOST_ARGUMENTS)))
                .map(FormulaText::sum)
                .toList());
    }

    /** Compared cell by cell, because SUMIF would take a text such as '&gt;5' or '*' for a rule of its own. */
    private String match(Formula.MatchSum sum, Addresses.Here here) {
        LaidTable table = addresses.table(sum.page(), sum.table(), here);
        String key = addresses.of(sum.key(), here);
        Predicate<Row> counted = isBlankElsewhere(table, sum.keyColumn()) ? row -> true : Row::isPlain;
        List<String> keys = trimmed(table, table.column(sum.keyColumn()), counted);
        List<String> values = trimmed(table, table.column(sum.column()), counted);
        String sheet = addresses.sheetPrefix(sum.page(), here);
        return IntStream.range(0, keys.size())
                .mapToObj(i -> "SUMPRODUCT(--(" + sheet + keys.get(i) + "=" + key + ")," + sheet + values.get(i) + ")")
                .collect(Collectors.joining("+"));
    }

    /** Whether nothing but plain rows has a key between the first and the last of them. */
    private static boolean isBlankElsewhere(LaidTable table, String keyColumn) {
        int column = table.table().column(keyColumn);
        List<Row> rows = plainSpan(table);
        return rows.stream().allMatch(row -> row.isPlain() || row.cells().get(column) == Cell.EMPTY);
    }

    private static List<Row> plainSpan(LaidTable table) {
        List<Row> rows = table.table().rows();
        int first = 0;
        while (first < rows.size() && !rows.get(first).isPlain()) {
            first++;
        }
        int last = rows.size();
        while (last > first && !rows.get(last - 1).isPlain()) {
            last--;
        }
        return rows.subList(first, last);
    }

    private static List<String> trimmed(LaidTable table, int column, Predicate<Row> counted) {
        List<Row> span = plainSpan(table);
        int first = span.isEmpty() ? 0 : table.table().rows().indexOf(span.get(0));
        return runs(span, table.firstRow() + first, column, counted);
    }

    private static List<String> runs(LaidTable table, int column, Predicate<Row> counted) {
        return runs(table.table().rows(), table.firstRow(), column, counted);
    }

    /** Ranges of neighbouring rows that count. */
    private static List<String> runs(List<Row> rows, int firstRow, int column, Predicate<Row> counted) {
        List<String> runs = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= rows.size(); i++) {
            boolean counts = i < rows.size() && counted.test(rows.get(i));
            if (counts && start < 0) {
                start = i;
            } else if (!counts && start >= 0) {
                runs.add(Ref.down(column, firstRow + start, firstRow + i - 1));
                start = -1;
            }
        }
        return runs;
    }
}
