package boltlore.report.xlsx;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * Columns as wide as they are together allowed to be, shared out so that the rows of their table take the fewest lines: a
 * row is as high as the cell in it that takes most.
 */
final class ColumnFit {

    /** A table that fills less of the sheet than this is left narrow. */
    private static final double NARROW = 0.7;

    private static final double FILLER = 10;

    /** What a line costs that makes its row no higher. */
    private static final double TIE = 0.001;

    private final List<ColumnWidth> needed;
    /** Lines that each row takes anyway. */
    private final int high;

    private final double[] widths;
    /** Of each column, the lines that its text takes in each row at its width of now. */
    private final int[][] lines;

    private ColumnFit(List<ColumnWidth> needed, double[] from) {
        this.needed = needed;
        this.high = needed.stream().mapToInt(ColumnWidth::high).max().orElse(1);
        this.widths = from;
        this.lines = new int[widths.length][];
        int rows = needed.stream().mapToInt(ColumnWidth::rows).max().orElse(0);
        Arrays.setAll(lines, i -> new int[rows]);
        for (int i = 0; i < widths.length; i++) {
            put(i, widths[i]);
        }
    }

    /** No wider than that where nothing is cut; boxes give way first. */
    static List<Double> narrowed(List<ColumnWidth> needed, double limit) {
        ColumnFit fit = new ColumnFit(
                needed, needed.stream().mapToDouble(ColumnWidth::usual).toArray());
        fit.shrink(limit, false);
        return list(fit.widths);
    }

    /** As wide as the sheet, or with empty columns behind where the table is a narrow one. */
    static List<Double> widened(List<ColumnWidth> needed, double sheet) {
        double full = needed.stream().mapToDouble(ColumnWidth::full).sum();
        double usual = needed.stream().mapToDouble(ColumnWidth::usual).sum();
        if (full > sheet && usual < sheet) {
            ColumnFit fit = new ColumnFit(
                    needed,
                    needed.stream()
                            .mapToDouble(each -> each.isText() ? Math.min(each.full(), sheet) : each.usual())
                            .toArray());
            fit.shrink(sheet, true);
            return stretched(needed, fit.widths, sheet);
        }
        return stretched(
                needed,
                needed.stream()
                        .mapToDouble(full > sheet ? ColumnWidth::usual : ColumnWidth::full)
                        .toArray(),
                sheet);
    }

    private static List<Double> stretched(List<ColumnWidth> needed, double[] widths, double sheet) {
        double left = sheet - sum(widths);
        if (sum(widths) >= NARROW * sheet) {
            boolean some = needed.stream().anyMatch(ColumnWidth::gives);
            double[] stretchable = new double[widths.length];
            Arrays.setAll(stretchable, i -> some && !needed.get(i).gives() ? 0 : widths[i]);
            double all = sum(stretchable);
            Arrays.setAll(widths, i -> widths[i] + left * stretchable[i] / all);
            return list(widths);
        }
        int fillers = (int) Math.max(1, Math.floor(left / FILLER));
        return Stream.concat(list(widths).stream(), Collections.nCopies(fillers, left / fillers).stream())
                .toList();
    }

    /** Takes character after character from the column whose rows grow least for it; of several, from the widest. */
    private void shrink(double limit, boolean textAlone) {
        double[] prices = new double[widths.length];
        Arrays.setAll(prices, i -> price(i, textAlone));
        for (double over = sum(widths) - limit; over > 0; over--) {
            int cheapest = 0;
            for (int i = 1; i < widths.length; i++) {
                boolean cheaper = prices[i] < prices[cheapest];
                cheapest = cheaper || (prices[i] == prices[cheapest] && widths[i] > widths[cheapest]) ? i : cheapest;
            }
            if (prices[cheapest] == Double.POSITIVE_INFINITY) {
                return;
            }
            widths[cheapest]--;
            if (prices[cheapest] > 0) {
                put(cheapest, widths[cheapest]);
                Arrays.setAll(prices, i -> price(i, textAlone));
            } else {
                prices[cheapest] = price(cheapest, textAlone);
            }
        }
    }

    /** Lines by which the table grows where that column becomes a character narrower, if it may. */
    private double price(int column, boolean textAlone) {
        ColumnWidth own = needed.get(column);
        if ((textAlone && !own.isText()) || widths[column] - 1 < own.least()) {
            return Double.POSITIVE_INFINITY;
        }
        double grown = 0;
        for (int row = 0; row < lines[column].length; row++) {
            int before = lines[column][row];
            int after = own.lines(row, widths[column] - 1);
            if (after != before) {
                int others = high;
                for (int i = 0; i < lines.length; i++) {
                    others = i == column ? others : Math.max(others, lines[i][row]);
                }
                grown += Math.max(after, others) - Math.max(before, others) + TIE * (after - before);
            }
        }
        return grown;
    }

    private void put(int column, double width) {
        Arrays.setAll(lines[column], row -> needed.get(column).lines(row, width));
    }

    private static double sum(double[] widths) {
        return Arrays.stream(widths).sum();
    }

    private static List<Double> list(double[] widths) {
        return Arrays.stream(widths).boxed().toList();
    }
}
