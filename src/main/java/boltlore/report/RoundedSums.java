package boltlore.report;

import boltlore.findings.Sentences;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Sums are of exact figures, and printed with few digits: what is printed above them may add up to another last digit.
 * Where that shows, a sheet says so, once; no figure is bent for it, since each of them stands on other sheets as well.
 */
final class RoundedSums {

    private RoundedSums() {}

    /** The pages, the first table whose printed sums do not add up followed by a note. */
    static List<Page> noted(List<Page> pages, String language) {
        List<Page> noted = new ArrayList<>();
        boolean said = false;
        for (Page page : pages) {
            List<Block> blocks = new ArrayList<>();
            for (Block block : page.blocks()) {
                blocks.add(block);
                if (!said && block instanceof Table table && isOff(table)) {
                    said = true;
                    String spoken = page.language().isEmpty() ? language : page.language();
                    blocks.add(Note.plain("rounded", Sentences.word("rounded", spoken)));
                }
            }
            noted.add(page.of(blocks));
        }
        return noted;
    }

    /** Whether some printed sum is not the sum of what is printed above it. */
    static boolean isOff(Table table) {
        return table.rows().stream()
                .filter(row -> row.kind() == Row.RowKind.SUBTOTAL || row.kind() == Row.RowKind.TOTAL)
                .anyMatch(row -> Stream.iterate(0, i -> i < table.columns().size(), i -> i + 1)
                        .anyMatch(i -> isOff(table, row, i)));
    }

    private static boolean isOff(Table table, Row sum, int column) {
        Kind kind = table.columns().get(column).kind();
        boolean digits = kind.form() == Kind.Form.DECIMAL || kind.form() == Kind.Form.MONEY;
        if (!digits || !(sum.cells().get(column) instanceof Cell.Worked worked)) {
            return false;
        }
        List<BigDecimal> addends = table.rows().stream()
                .filter(Row::isPlain)
                .filter(row -> sum.group().isEmpty() || row.group().equals(sum.group()))
                .map(row -> figure(row.cells().get(column)))
                .toList();
        BigDecimal exact = addends.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal shown =
                addends.stream().map(addend -> Printed.rounded(kind, addend)).reduce(BigDecimal.ZERO, BigDecimal::add);
        return same(kind, exact, worked.result()) && !same(kind, shown, worked.result());
    }

    private static boolean same(Kind kind, BigDecimal one, BigDecimal other) {
        return Printed.rounded(kind, one).compareTo(Printed.rounded(kind, other)) == 0;
    }

    private static BigDecimal figure(Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return figure.value();
        }
        return cell instanceof Cell.Worked worked ? worked.result() : BigDecimal.ZERO;
    }
}
