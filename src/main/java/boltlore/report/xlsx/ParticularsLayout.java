package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Look;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Printed;
import boltlore.report.xlsx.LaidPage.LaidCell;
import boltlore.report.xlsx.LaidPage.LaidRow;
import boltlore.report.xlsx.LaidPage.Spot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays named values in one stack, or in two or three side by side where there are more than a few. */
final class ParticularsLayout {

    private static final int FEW = 3;
    private static final int MOST_STACKS = 3;
    private static final int INDENT = 2;
    private static final int WIDEST_LABEL = 22;
    private static final int WIDEST_VALUE = 60;

    private final Grid grid;
    private final Particulars block;
    private final List<Particular> entries;
    private final int height;
    private final Grid.Spans spans;

    ParticularsLayout(Grid grid, Particulars block) {
        this.grid = grid;
        this.block = block;
        this.entries = block.entries();
        int stacks = stacks();
        this.height = (entries.size() + stacks - 1) / stacks;
        List<ColumnWidth> widths = widths(stacks);
        for (int stack = 0; stack < stacks - 1; stack++) {
            double label = widths.get(2 * stack).usual();
            widths.set(2 * stack + 1, ColumnWidth.fixed(grid.total() / stacks - label));
        }
        this.spans = grid.span(widths);
    }

    private int stacks() {
        if (entries.size() <= FEW) {
            return 1;
        }
        List<ColumnWidth> three = widths(MOST_STACKS);
        boolean fit = three.size() == 2 * MOST_STACKS;
        for (int i = 0; i < three.size(); i += 2) {
            double needed = three.get(i).usual() + three.get(i + 1).full();
            fit = fit && needed < grid.total() / MOST_STACKS - INDENT;
        }
        return entries.size() > 2 * FEW - 2 && fit ? MOST_STACKS : 2;
    }

    private List<ColumnWidth> widths(int stacks) {
        int high = (entries.size() + stacks - 1) / stacks;
        List<ColumnWidth> widths = new ArrayList<>();
        for (int from = 0; from < entries.size(); from += high) {
            widths.addAll(widths(entries.subList(from, Math.min(entries.size(), from + high)), from / high));
        }
        return widths;
    }

    /** Of the labels and of the values. */
    private static List<ColumnWidth> widths(List<Particular> stack, int indents) {
        double label = 1;
        int value = 16;
        for (Particular entry : stack) {
            label = Math.max(label, FontMetrics.width(entry.label()));
            value = Math.max(value, text(entry).length());
        }
        return List.of(
                ColumnWidth.text(label + indents * INDENT, WIDEST_LABEL), ColumnWidth.prose(value, WIDEST_VALUE));
    }

    Map<String, Spot> spots(int firstRow) {
        Map<String, Spot> spots = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            spots.put(entries.get(i).key(), new Spot(spans.start(i / height * 2 + 1), firstRow + i % height));
        }
        return spots;
    }

    List<LaidRow> rows() {
        List<LaidRow> rows = new ArrayList<>();
        for (int row = 0; row < height; row++) {
            List<LaidCell> cells = new ArrayList<>();
            double points = LookStyle.lineHeight();
            for (int i = row; i < entries.size(); i += height) {
                Particular entry = entries.get(i);
                int at = i / height * 2;
                CellStyleKey label = CellStyleKey.of(Look.LABEL);
                cells.add(cell(at, at == 0 ? label : label.indent(), Cell.of(entry.label())));
                cells.add(cell(at + 1, CellStyleKey.alone(entry.kind()), entry.cell()));
                points = Math.max(points, LookStyle.height(Look.LABEL, entry.label(), width(at)));
                points = Math.max(points, LookStyle.height(Look.VALUE, text(entry), width(at + 1)));
                points = Math.max(points, entry.kind().form().isByHand() ? LookStyle.BY_HAND : 0);
            }
            rows.add(new LaidRow(points, block.name(), cells));
        }
        return rows;
    }

    private LaidCell cell(int i, CellStyleKey style, Cell cell) {
        return new LaidCell(spans.start(i), spans.span(i), style, cell);
    }

    private double width(int i) {
        return grid.width(spans.start(i), spans.start(i + 1));
    }

    private static String text(Particular entry) {
        return Printed.alone(entry.kind(), entry.cell());
    }
}
