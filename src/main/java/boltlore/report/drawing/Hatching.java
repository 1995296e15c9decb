package boltlore.report.drawing;

import java.util.ArrayList;
import java.util.List;

/** Thin slanted lines across an area, which on workshop drawings is cut away. */
public final class Hatching {

    private static final double APART_MM = 1.6;

    private Hatching() {}

    /** Lines rising to the right at 45° across an upright rectangle. */
    public static List<Mark> draw(double left, double top, double right, double bottom) {
        List<Mark> lines = new ArrayList<>();
        double height = bottom - top;
        for (double foot = left - height + APART_MM; foot < right; foot += APART_MM) {
            double from = Math.max(foot, left);
            double to = Math.min(foot + height, right);
            if (to > from) {
                lines.add(Mark.line(new Point(from, bottom - (from - foot)), new Point(to, bottom - (to - foot))));
            }
        }
        return lines;
    }
}
