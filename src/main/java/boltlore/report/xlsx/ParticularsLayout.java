package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Look;
import boltlore.report.Particular;
import boltlore.report.Particulars;
import boltlore.report.Printed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays named values in one stack, or in two side by side where there are more than a few. */
final class ParticularsLayout {

    private static final int FEW = 3;
    private static final int INDENT = 2;
    private static final int WIDEST_LABEL = 22;
    private static final int WIDEST_VALUE = 60;

    private final Grid grid;
    private final Particulars block;
    private final int stacks;
    private final int height;
    private final Spans spans;

    ParticularsLayout(Grid grid, Particulars block) {
        this.grid = grid;
        this.block = block;
        int count = block.entries().size();
        this.stacks = count > FEW ? 2 : 1;
        this.height = (count + stacks - 1) / stacks;
        this.spans = spans();
    }

    private Spans spans() {
        double half = grid.total() / 2;
        List<Need> needs = new ArrayList<>();
        for (int stack = 0; stack < stacks; stack++) {
            List<Particular> entries = entries(stack);
            double label = entries.stream()
                    .mapToDouble(entry -> Type.width(entry.label()))
                    .max()
                    .orElse(1);
            int value = entries.stream()
                    .mapToInt(entry -> text(entry).length())
                    .max()
                    .orElse(1);
            Need labels = Need.text(stack == 0 ? label : label + INDENT, WIDEST_LABEL);
            needs.add(labels);
            boolean fillsHalf = stacks == 2 && stack == 0;
            needs.add(fillsHalf ? Need.fixed(half - labels.usual()) : Need.text(Math.max(value, 16), WIDEST_VALUE));
        }
        return grid.span(needs);
    }

    private List<Particular> entries(int stack) {
        int from = Math.min(block.entries().size(), stack * height);
        return block.entries().subList(from, Math.min(block.entries().size(), from + height));
    }

    Map<String, LaidPage.Spot> spots(int firstRow) {
        Map<String, LaidPage.Spot> spots = new LinkedHashMap<>();
        for (int i = 0; i < block.entries().size(); i++) {
            int column = spans.start(i / height * 2 + 1);
            spots.put(block.entries().get(i).key(), new LaidPage.Spot(column, firstRow + i % height));
        }
        return spots;
    }

    List<LaidRow> rows() {
        List<LaidRow> rows = new ArrayList<>();
        for (int row = 0; row < height; row++) {
            List<LaidCell> cells = new ArrayList<>();
            double points = Heights.line();
            for (int i = row; i < block.entries().size(); i += height) {
                Particular entry = block.entries().get(i);
                int at = i / height * 2;
                cells.add(LaidCell.of(
                        spans.start(at),
                        spans.span(at),
                        at == 0 ? Face.of(Look.LABEL) : Face.of(Look.LABEL).indented(),
                        Cell.of(entry.label())));
                cells.add(LaidCell.of(spans.start(at + 1), spans.span(at + 1), Face.alone(entry.kind()), entry.cell()));
                points = Math.max(points, Heights.of(Look.LABEL, entry.label(), width(at)));
                points = Math.max(points, Heights.of(Look.VALUE, text(entry), width(at + 1)));
                points = Math.max(points, entry.kind().form().isByHand() ? Heights.BY_HAND : 0);
            }
            rows.add(new LaidRow(points, cells));
        }
        return rows;
    }

    private double width(int i) {
        return grid.width(spans.start(i), spans.start(i + 1));
    }

    private static String text(Particular entry) {
        return Printed.alone(entry.kind(), entry.cell());
    }
}
