package boltlore.report.text;

import boltlore.report.BarChart;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.report.Wrapping;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Bars of number signs, the longest as long as the line allows. */
final class TextChart {

    private final BarChart chart;
    private final int width;
    private final String language;

    TextChart(BarChart chart, int width, String language) {
        this.chart = chart;
        this.width = width;
        this.language = language;
    }

    private record Bar(String label, String value, BigDecimal length) {}

    List<String> lines(@Nullable Page page) {
        List<String> lines = new ArrayList<>(List.of(chart.title() + ", " + chart.axis()));
        if (page != null) {
            page.tables()
                    .filter(table -> table.name().equals(chart.table()))
                    .forEach(table -> lines.addAll(draw(bars(table))));
        }
        return lines;
    }

    private List<Bar> bars(Table table) {
        int labels = table.column(chart.labels());
        int values = table.column(chart.values());
        return table.rows().stream()
                .filter(Row::isPlain)
                .map(row -> new Bar(
                        printed(table, row, labels),
                        printed(table, row, values),
                        figure(row.cells().get(values))))
                .toList();
    }

    private String printed(Table table, Row row, int column) {
        return Printed.inColumn(table.columns().get(column).kind(), row.cells().get(column), language);
    }

    private List<String> draw(List<Bar> bars) {
        int label = bars.stream()
                .mapToInt(bar -> Wrapping.length(bar.label()))
                .max()
                .orElse(0);
        int value = bars.stream().mapToInt(bar -> bar.value().length()).max().orElse(0);
        BigDecimal longest = bars.stream().map(Bar::length).reduce(BigDecimal.ZERO, BigDecimal::max);
        BigDecimal room = BigDecimal.valueOf(Math.max(10, width - label - value - 2 * Padding.GAP.length()));
        return bars.stream()
                .map(bar -> Padding.left(bar.label(), label)
                        + Padding.GAP
                        + Padding.right(bar.value(), value)
                        + Padding.GAP
                        + "#".repeat(signs(bar.length(), longest, room)))
                .toList();
    }

    private static int signs(BigDecimal length, BigDecimal longest, BigDecimal room) {
        if (length.signum() <= 0) {
            return 0;
        }
        return length.multiply(room).divide(longest, 0, RoundingMode.HALF_UP).intValue();
    }

    private static BigDecimal figure(Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return figure.value();
        }
        return cell instanceof Cell.Worked worked ? worked.result() : BigDecimal.ZERO;
    }
}
