package boltlore.trades.costing.sheets;

import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Hatching;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The elements of a full cost as hatched bars, one below the other, each with its amount in whole units of the currency. */
final class CostBars {

    private static final double WIDTH_MM = Drawing.PORTRAIT_MM;
    private static final double ROW_MM = 6;
    private static final double BAR_MM = 4;
    private static final double LEFT_MM = 62;
    private static final double LONGEST_MM = 84;
    private static final double WORDS_MM = 2.2;

    private final Elements all;
    private final String currency;
    private final double mmForOne;
    private final List<Mark> marks = new ArrayList<>();

    private CostBars(FullCost cost) {
        this.all = cost.kit().plus(cost.ofExtras());
        this.currency = cost.costed().currency().getCurrencyCode();
        BigDecimal largest = all.amounts().values().stream().reduce(BigDecimal.ONE, BigDecimal::max);
        this.mmForOne = LONGEST_MM / largest.doubleValue();
    }

    static Drawing draw(FullCost cost) {
        CostBars bars = new CostBars(cost);
        List<Element> elements = Arrays.stream(Element.values())
                .filter(element -> bars.all.of(element).signum() != 0)
                .toList();
        for (int row = 0; row < elements.size(); row++) {
            bars.bar(elements.get(row), 2 + row * ROW_MM);
        }
        double height = 4 + Math.max(1, elements.size()) * ROW_MM;
        bars.marks.add(Mark.line(new Point(LEFT_MM, 0), new Point(LEFT_MM, height)));
        return new Drawing(WIDTH_MM, height, bars.says(elements), bars.marks);
    }

    private void bar(Element element, double top) {
        double right = LEFT_MM + all.of(element).doubleValue() * mmForOne;
        double bottom = top + BAR_MM;
        double middle = top + BAR_MM / 2;
        marks.add(Mark.from(new Point(2, middle), element.says(), WORDS_MM));
        marks.add(Mark.outline(Outlines.box(LEFT_MM, top, right, bottom)));
        marks.addAll(Hatching.draw(LEFT_MM, top, right, bottom));
        marks.add(Mark.from(new Point(right + 2, middle), whole(element) + " " + currency, WORDS_MM));
    }

    private String whole(Element element) {
        return all.of(element).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    private String says(List<Element> elements) {
        return elements.stream()
                .map(element -> element.says() + " " + whole(element))
                .collect(Collectors.joining(", ", "Full cost as bars, in " + currency + ": ", "."));
    }
}
