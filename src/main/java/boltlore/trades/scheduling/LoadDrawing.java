package boltlore.trades.scheduling;

import boltlore.measure.Digits;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Hatching;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The load of one work centre week by week: what is needed as columns in outline, what is available as a dashed line across
 * them, what is over it hatched and with its hours above. All weeks to the scale of the largest.
 */
final class LoadDrawing {

    /** Weeks that lie side by side so that their numbers can be read. */
    static final int MOST_WEEKS = 52;

    private static final double WIDTH_MM = Drawing.LANDSCAPE_MM;
    private static final double HEIGHT_MM = 32;
    private static final double LEFT_MM = 14;
    private static final double TOP_MM = 9;
    private static final double FOOT_MM = 27;
    private static final double TITLE_MM = 2.4;
    private static final double SMALL_MM = 1.8;
    private static final double GAP_MM = 0.4;
    private static final double WIDEST_MM = 12;

    private final List<WeekLoad> weeks;
    private final double widthMm;
    private final double mmOnPaper;
    private final List<Mark> marks = new ArrayList<>();

    private LoadDrawing(List<WeekLoad> weeks) {
        this.weeks = weeks.subList(0, Math.min(weeks.size(), MOST_WEEKS));
        this.widthMm = Math.min(WIDEST_MM, (WIDTH_MM - LEFT_MM - 1) / this.weeks.size());
        this.mmOnPaper = (FOOT_MM - TOP_MM)
                / this.weeks.stream()
                        .mapToDouble(week -> Math.max(week.needed(), week.available()))
                        .reduce(1, Math::max);
    }

    /** @param weeks of one work centre, at least one */
    static Drawing draw(String centre, List<WeekLoad> weeks) {
        LoadDrawing drawing = new LoadDrawing(weeks);
        drawing.axis(centre);
        for (int i = 0; i < drawing.weeks.size(); i++) {
            drawing.week(i, drawing.weeks.get(i));
        }
        return new Drawing(WIDTH_MM, HEIGHT_MM, drawing.words(centre), drawing.marks);
    }

    private double x(int place) {
        return LEFT_MM + place * widthMm;
    }

    private double y(long minutes) {
        return FOOT_MM - minutes * mmOnPaper;
    }

    private void axis(String centre) {
        marks.add(Mark.from(new Point(1, TITLE_MM), centre + " – hours a week", TITLE_MM));
        marks.add(Mark.line(new Point(LEFT_MM, FOOT_MM), new Point(x(weeks.size()), FOOT_MM)));
        marks.add(Mark.from(new Point(1, FOOT_MM + 2.4), "Week", SMALL_MM));
        long most = weeks.stream().mapToLong(WeekLoad::available).max().orElse(0);
        marks.add(Mark.from(new Point(1, y(most)), Digits.plain(SchedulingFindings.hours(most)) + " h", SMALL_MM));
    }

    private void week(int place, WeekLoad week) {
        double left = x(place) + GAP_MM;
        double right = x(place + 1) - GAP_MM;
        if (week.needed() > 0) {
            marks.add(Mark.outline(Outlines.box(left, y(week.needed()), right, FOOT_MM)));
        }
        marks.add(Mark.dashed(Outlines.box(x(place), y(week.available()), x(place + 1), y(week.available()))));
        if (week.over() > 0) {
            marks.addAll(Hatching.draw(left, y(week.needed()), right, y(week.available())));
            above(place, y(week.needed()), "+" + Digits.plain(SchedulingFindings.hours(week.over())));
        }
        String number = String.valueOf(week.monday().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        marks.add(Mark.centred(new Point(x(place) + widthMm / 2, FOOT_MM + 2.4), number, SMALL_MM));
    }

    /** Smaller where the week is too narrow for it. */
    private void above(int place, double top, String hours) {
        double size = Math.min(SMALL_MM, SMALL_MM * widthMm / Mark.Lettering.widthMm(hours, SMALL_MM));
        marks.add(Mark.centred(new Point(x(place) + widthMm / 2, top - size), hours, size));
    }

    private String words(String centre) {
        String over = weeks.stream()
                .filter(week -> week.over() > 0)
                .map(week -> week.week() + " " + Digits.plain(SchedulingFindings.hours(week.over())) + " h over")
                .collect(Collectors.joining(", "));
        return centre + ", load in " + weeks.size() + " weeks: " + (over.isEmpty() ? "in no week too much" : over);
    }
}
