package boltlore.trades.coating;

import boltlore.catalogue.EnvelopeMm;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The rails of an oven that hold anything, each as one looks along it from the side; to scale. Two stand beside each other.
 */
final class HangingDrawing {

    private static final double WIDTH_MM = 140;
    private static final double EDGE_MM = 1;
    /** Rails side by side, in one scale for all loads. */
    private static final int ACROSS = 2;

    private static final double BETWEEN_MM = 6;
    private static final double HEAD_MM = 5;
    private static final double FOOT_MM = 5;
    /** Of the oven's height, below the lowest piece. */
    private static final int BELOW_MM = 80;

    private static final double WORDS_MM = 2.2;
    private static final double SMALL_MM = 1.7;
    private static final double HOOK_MM = 1.2;

    private final HangingPlan plan;
    private final int across;
    private final double viewMm;
    private final double perMm;
    private final double heightMm;
    /** How far down the oven is drawn: not where nothing hangs. */
    private final double shownMm;

    private final List<Mark> marks = new ArrayList<>();
    /** Where numbers stand below their pieces. */
    private final List<Point> below = new ArrayList<>();

    private HangingDrawing(HangingPlan plan) {
        this.plan = plan;
        EnvelopeMm inside = plan.oven().inside();
        this.across = ACROSS;
        this.viewMm = (WIDTH_MM - 2 * EDGE_MM - (across - 1) * BETWEEN_MM) / across;
        this.perMm = viewMm / inside.length();
        int lowest = plan.places().stream()
                .mapToInt(place -> place.topMm() + place.piece().size().downMm())
                .max()
                .orElse(0);
        this.shownMm = Math.min(inside.height(), lowest + BELOW_MM);
        this.heightMm = HEAD_MM + HOOK_MM + shownMm * perMm + FOOT_MM;
    }

    static Drawing draw(HangingPlan plan) {
        HangingDrawing drawing = new HangingDrawing(plan);
        int view = 0;
        for (Map.Entry<Integer, List<Place>> rail : plan.byRail().entrySet()) {
            drawing.rail(rail.getKey(), rail.getValue(), view);
            view++;
        }
        int rows = (view + drawing.across - 1) / drawing.across;
        return new Drawing(WIDTH_MM, rows * drawing.heightMm, says(plan), drawing.marks);
    }

    private static String says(HangingPlan plan) {
        return "Load " + plan.load().number() + " as it may hang. "
                + plan.byRail().entrySet().stream()
                        .map(rail -> "Rail " + rail.getKey() + ": " + numbers(rail.getValue()))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String numbers(List<Place> places) {
        return places.stream()
                .map(place -> "No. " + place.piece().number() + " from " + place.fromMm() + " mm"
                        + (place.topMm() == 0 ? "" : ", " + place.topMm() + " mm down"))
                .collect(Collectors.joining(", "));
    }

    private void rail(int number, List<Place> places, int view) {
        double left = EDGE_MM + view % across * (viewMm + BETWEEN_MM);
        int line = view / across;
        double top = line * heightMm;
        EnvelopeMm inside = plan.oven().inside();
        String size = view == 0 ? " – inside " + inside.length() + " × " + inside.height() + " mm" : "";
        marks.add(Mark.from(new Point(left, top + HEAD_MM / 2), "Rail " + number + size, WORDS_MM));
        double railMm = top + HEAD_MM;
        marks.add(inside(left, railMm, railMm + HOOK_MM + shownMm * perMm));
        marks.add(new Mark.Line(
                List.of(new Point(left, railMm), new Point(left + viewMm, railMm)), Mark.THICK_MM, false));
        places.forEach(place -> piece(place, left, railMm));
    }

    /** The oven's inside, open at the foot where it goes on. */
    private Mark inside(double left, double top, double bottom) {
        List<Point> box = Outlines.box(left, top, left + viewMm, bottom);
        boolean whole = shownMm == plan.oven().inside().height();
        return whole
                ? Mark.dashed(box)
                : new Mark.Line(List.of(box.get(3), box.get(0), box.get(1), box.get(2)), Mark.THIN_MM, true);
    }

    private void piece(Place place, double viewLeft, double railMm) {
        double left = viewLeft + place.fromMm() * perMm;
        double top = railMm + HOOK_MM + place.topMm() * perMm;
        double right = left + place.piece().size().alongMm() * perMm;
        double bottom = top + place.piece().size().downMm() * perMm;
        double middle = (left + right) / 2;
        marks.add(Mark.outline(Outlines.box(left, top, right, bottom)));
        double hookFrom = place.topMm() == 0 ? railMm : top - HOOK_MM;
        marks.add(Mark.line(new Point(middle, hookFrom), new Point(middle, top)));
        number(place, viewLeft, new Point(middle, bottom), top, right - left);
    }

    /** In the piece where it has room, else below it, clear of the oven's ends and of its neighbour's number. */
    private void number(Place place, double viewLeft, Point foot, double top, double roomMm) {
        String number =
                String.valueOf(place.piece().number()) + (place.rails() > 1 ? " on " + place.rails() + " rails" : "");
        if (Mark.Lettering.widthMm(number, WORDS_MM) + 2 <= roomMm && foot.yMm() - top > WORDS_MM + 1) {
            marks.add(Mark.centred(new Point(foot.xMm(), (top + foot.yMm()) / 2), number, WORDS_MM));
        } else {
            double clear = Mark.Lettering.widthMm(number, SMALL_MM) / 2 + Mark.THICK_MM;
            double x = Math.min(Math.max(foot.xMm(), viewLeft + clear), viewLeft + viewMm - clear);
            double lower = below.stream()
                            .anyMatch(other -> Math.abs(other.xMm() - x) < 2 * clear
                                    && Math.abs(other.yMm() - foot.yMm() - SMALL_MM) < SMALL_MM)
                    ? 2.2
                    : 1;
            Point at = new Point(x, foot.yMm() + lower * SMALL_MM);
            below.add(at);
            marks.add(Mark.centred(at, number, SMALL_MM));
        }
    }
}
