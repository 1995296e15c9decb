package boltlore.trades.shipping;

import boltlore.catalogue.EnvelopeMm;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** All crates of an order from their long side, in rows on the floor, to one scale, with length, height and gross mass. */
final class CratesDrawing {

    private static final double WIDTH_MM = Drawing.PORTRAIT_MM;
    private static final double SCALE = 1.0 / 40;
    private static final double GAP_MM = 9;
    private static final double ABOVE_MM = 7;
    private static final double BELOW_MM = 9;
    private static final double WORDS_MM = 2.2;

    private final List<Mark> marks = new ArrayList<>();
    private double floor;
    private double right;

    private CratesDrawing() {}

    /** What does not fit beside the others stands in the next row. */
    static Drawing draw(List<Crate> crates) {
        CratesDrawing drawing = new CratesDrawing();
        for (List<Crate> row : rows(crates)) {
            drawing.row(row);
        }
        drawing.marks.add(Mark.from(new Point(2, drawing.floor + 1), "Sizes in mm, gross masses", WORDS_MM * 0.8));
        return new Drawing(WIDTH_MM, drawing.floor + 3, says(crates), drawing.marks);
    }

    private static String says(List<Crate> crates) {
        return crates.stream()
                .map(crate -> "crate " + crate.number() + " "
                        + NumberFormats.size(crate.type().outside()) + " mm, " + NumberFormats.kg(crate.grossKg()))
                .collect(Collectors.joining("; ", "Crates from their long side, 1 : 40: ", "."));
    }

    private static List<List<Crate>> rows(List<Crate> crates) {
        List<List<Crate>> rows = new ArrayList<>();
        double at = WIDTH_MM;
        for (Crate crate : crates) {
            double wide = width(crate);
            if (at + wide > WIDTH_MM) {
                rows.add(new ArrayList<>());
                at = GAP_MM;
            }
            rows.get(rows.size() - 1).add(crate);
            at += wide + GAP_MM;
        }
        return rows;
    }

    private static double width(Crate crate) {
        return crate.type().outside().length() * SCALE;
    }

    private void row(List<Crate> crates) {
        double tallest = crates.stream()
                .mapToDouble(crate -> crate.type().outside().height() * SCALE)
                .max()
                .orElse(0);
        double foot = floor + ABOVE_MM + tallest;
        right = GAP_MM;
        crates.forEach(crate -> crate(crate, foot));
        marks.add(Mark.line(new Point(2, foot), new Point(WIDTH_MM - 2, foot)));
        floor = foot + BELOW_MM;
    }

    private void crate(Crate crate, double foot) {
        EnvelopeMm size = crate.type().outside();
        double left = right;
        double end = left + width(crate);
        double top = foot - size.height() * SCALE;
        box(left, top, end, foot);
        words(crate, new Point((left + end) / 2, (top + foot) / 2), top);
        across(left, end, foot + 3, size.length());
        upwards(left - 3, top, foot, size.height());
        right = end + GAP_MM;
    }

    private void box(double left, double top, double end, double foot) {
        marks.add(Mark.outline(Outlines.box(left, top, end, foot)));
    }

    private void words(Crate crate, Point middle, double top) {
        marks.add(Mark.centred(middle, "" + crate.number(), WORDS_MM * 1.6));
        String mass = NumberFormats.kg(crate.grossKg());
        marks.add(Mark.centred(new Point(middle.xMm(), top - 3), mass, WORDS_MM));
    }

    private void across(double from, double to, double y, int mm) {
        marks.add(Mark.line(new Point(from, y), new Point(to, y)));
        ticks(from, y);
        ticks(to, y);
        marks.add(Mark.centred(new Point((from + to) / 2, y + 2.6), "" + mm, WORDS_MM * 0.8));
    }

    private void upwards(double x, double top, double foot, int mm) {
        marks.add(Mark.line(new Point(x, top), new Point(x, foot)));
        ticks(x, top);
        ticks(x, foot);
        marks.add(Mark.centred(new Point(x - 2.6, top - 1.4), "" + mm, WORDS_MM * 0.8));
    }

    private void ticks(double x, double y) {
        marks.add(Mark.line(new Point(x - 0.8, y + 0.8), new Point(x + 0.8, y - 0.8)));
    }
}
