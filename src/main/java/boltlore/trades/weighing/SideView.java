package boltlore.trades.weighing;

import boltlore.measure.Digits;
import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle from its side, front at the left: axle loads before and after under the wheels, the centre of gravity before
 * in dashes and after in full. To scale between the axles and upwards; body and wheels are only hinted at.
 */
final class SideView {

    private static final double WIDTH_MM = Drawing.PORTRAIT_MM;
    private static final double HEIGHT_MM = 60;
    private static final double BETWEEN_AXLES_MM = 66;
    private static final double FRONT_X_MM = 52;
    private static final double ROAD_Y_MM = 39;
    private static final double WHEEL_MM = 8;
    private static final double WORDS_MM = 2.4;

    private final OnAxles onAxles;
    private final double perMm;
    private final List<Mark> marks = new ArrayList<>();

    private SideView(OnAxles onAxles) {
        this.onAxles = onAxles;
        this.perMm = BETWEEN_AXLES_MM / onAxles.chassis().wheelbaseMm();
    }

    static Drawing draw(OnAxles onAxles) {
        SideView view = new SideView(onAxles);
        view.vehicle();
        view.axle(Limited.FRONT, FRONT_X_MM);
        view.axle(Limited.REAR, FRONT_X_MM + BETWEEN_AXLES_MM);
        view.wheelbase();
        view.centres();
        return new Drawing(WIDTH_MM, HEIGHT_MM, says(onAxles), view.marks);
    }

    private static String says(OnAxles onAxles) {
        return "Side view, front at the left. Front axle: " + kg(onAxles.donor().frontKg()) + " before, "
                + kg(onAxles.converted().frontKg()) + " after. Rear axle: "
                + kg(onAxles.donor().rearKg()) + " before, "
                + kg(onAxles.converted().rearKg()) + " after. Centre of gravity behind the front axle: "
                + mm(onAxles.centreBeforeMm()) + " before, " + mm(onAxles.centreAfterMm()) + " after.";
    }

    private void vehicle() {
        double left = FRONT_X_MM - 22;
        double right = FRONT_X_MM + BETWEEN_AXLES_MM + 26;
        double sill = ROAD_Y_MM - 7;
        marks.add(Mark.dashed(List.of(
                new Point(left, sill),
                new Point(left + 2, 12),
                new Point(left + 12, 3),
                new Point(right, 3),
                new Point(right, sill))));
        marks.add(Mark.line(new Point(8, ROAD_Y_MM), new Point(WIDTH_MM - 8, ROAD_Y_MM)));
        marks.add(Mark.from(new Point(8, 8), "Front", WORDS_MM));
        marks.add(Mark.from(new Point(WIDTH_MM - 22, 8), "Rear", WORDS_MM));
    }

    private void axle(Limited axle, double x) {
        marks.add(Mark.outline(Outlines.circle(x, ROAD_Y_MM - WHEEL_MM, WHEEL_MM)));
        cross(x, ROAD_Y_MM - WHEEL_MM, 1.5);
        marks.add(Mark.centred(
                new Point(x, ROAD_Y_MM + 4), "Before " + kg(onAxles.donor().on(axle)), WORDS_MM));
        marks.add(Mark.centred(
                new Point(x, ROAD_Y_MM + 8.5), "After " + kg(onAxles.converted().on(axle)), WORDS_MM));
    }

    private void wheelbase() {
        double y = ROAD_Y_MM + 14;
        double rear = FRONT_X_MM + BETWEEN_AXLES_MM;
        marks.add(Mark.line(new Point(FRONT_X_MM, y), new Point(rear, y)));
        for (double x : new double[] {FRONT_X_MM, rear}) {
            marks.add(Mark.line(new Point(x, ROAD_Y_MM + 11), new Point(x, y + 1.5)));
            marks.add(Mark.line(new Point(x - 1, y + 1), new Point(x + 1, y - 1)));
        }
        String length = onAxles.chassis().wheelbaseMm() + " mm between the axles";
        marks.add(Mark.centred(new Point((FRONT_X_MM + rear) / 2, y + 3), length, WORDS_MM));
    }

    private void centres() {
        CentreHeight height = onAxles.height();
        centre(onAxles.centreBeforeMm(), height == null ? null : height.beforeMm(), true);
        centre(onAxles.centreAfterMm(), height == null ? null : height.afterMm(), false);
    }

    /** Where the height is not known the centre stands at the height of the axles. */
    private void centre(BigDecimal behindMm, @Nullable BigDecimal heightMm, boolean before) {
        double x = FRONT_X_MM + behindMm.doubleValue() * perMm;
        double y = ROAD_Y_MM - (heightMm == null ? WHEEL_MM : heightMm.doubleValue() * perMm);
        List<Point> circle = Outlines.circle(x, y, 1.6);
        marks.add(before ? Mark.dashed(circle) : Mark.outline(circle));
        cross(x, y, 2.4);
        boolean labelLeft = before == (onAxles.shiftMm().signum() >= 0);
        String says = before ? "Before" : "After";
        double width = Mark.Lettering.widthMm(says, WORDS_MM);
        marks.add(Mark.from(new Point(labelLeft ? x - 4 - width : x + 4, y), says, WORDS_MM));
    }

    private void cross(double x, double y, double arm) {
        marks.add(Mark.line(new Point(x - arm, y), new Point(x + arm, y)));
        marks.add(Mark.line(new Point(x, y - arm), new Point(x, y + arm)));
    }

    private static String kg(BigDecimal kg) {
        return Digits.upTo(kg.abs(), 1) + " kg";
    }

    private static String mm(BigDecimal mm) {
        return Digits.upTo(mm.abs(), 0) + " mm";
    }
}
