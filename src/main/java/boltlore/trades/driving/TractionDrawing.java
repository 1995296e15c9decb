package boltlore.trades.driving;

import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Outlines;
import boltlore.report.drawing.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Forces at the wheels over speed: what the drive gives, and what the road asks for on some gradients. */
final class TractionDrawing {

    private static final double LEFT_MM = 18;
    private static final double RIGHT_MM = 152;
    private static final double TOP_MM = 6;
    private static final double FOOT_MM = 76;
    private static final double HEIGHT_MM = 92;
    private static final double WORDS_MM = 2.2;
    private static final double TICK_KMH = 20;
    private static final double NEWTON_IN_KN = 1000;
    private static final int STEPS = 120;
    private static final int[] GRADIENTS = {0, 10, 20, 30};

    private final ConvertedVehicle vehicle;
    private final double fastestKmh;
    private final double mostKn;
    private final List<Mark> marks = new ArrayList<>();

    private TractionDrawing(ConvertedVehicle vehicle) {
        this.vehicle = vehicle;
        this.fastestKmh = ConvertedVehicle.kmh(vehicle.traction().fastest());
        this.mostKn = StrictMath.ceil(vehicle.traction().peakNewton(0) / NEWTON_IN_KN * 1.05);
    }

    static Drawing draw(ConvertedVehicle vehicle) {
        return new TractionDrawing(vehicle).drawn();
    }

    private Drawing drawn() {
        marks.add(Mark.outline(Outlines.box(LEFT_MM, TOP_MM, RIGHT_MM, FOOT_MM)));
        axes();
        curve(vehicle.traction()::peakNewton, Mark.THICK_MM, false);
        curve(vehicle.traction()::continuousNewton, Mark.THIN_MM, false);
        for (int percent : GRADIENTS) {
            gradient(percent);
        }
        marks.add(Mark.from(
                new Point(LEFT_MM, HEIGHT_MM - 4),
                "Thick: short-time force. Thin: continuous. Dashed: resistance, fully laden, by gradient.",
                WORDS_MM));
        return new Drawing(
                Drawing.PORTRAIT_MM,
                HEIGHT_MM,
                "Force at the wheels over speed: the drive's short-time and continuous force, and the resistance on 0, 10,"
                        + " 20 and 30 % for the fully laden vehicle.",
                marks);
    }

    private void axes() {
        for (double kmh = 0; kmh <= fastestKmh; kmh += TICK_KMH) {
            double at = x(kmh);
            marks.add(Mark.line(new Point(at, FOOT_MM), new Point(at, FOOT_MM + 1.2)));
            marks.add(Mark.centred(new Point(at, FOOT_MM + 4), plain(kmh), WORDS_MM));
        }
        for (double kn = 0; kn <= mostKn; kn++) {
            double at = y(kn * NEWTON_IN_KN);
            marks.add(Mark.line(new Point(LEFT_MM - 1.2, at), new Point(LEFT_MM, at)));
            marks.add(Mark.centred(new Point(LEFT_MM - 4, at), plain(kn), WORDS_MM));
        }
        marks.add(Mark.from(new Point(2, TOP_MM - 3.5), "kN at the wheels", WORDS_MM));
        marks.add(Mark.from(new Point(RIGHT_MM + 3, FOOT_MM + 4), "km/h", WORDS_MM));
    }

    private void gradient(int percent) {
        double rise = percent / 100.0;
        DoubleUnaryOperator asks = ms -> vehicle.laden().newton(ms, rise);
        curve(asks, Mark.THIN_MM, true);
        int last = lastInFrame(asks);
        if (last == STEPS) {
            marks.add(Mark.from(new Point(RIGHT_MM + 2, y(asks.applyAsDouble(ms(last)))), percent + " %", WORDS_MM));
        } else if (last > 0) {
            marks.add(
                    Mark.centred(new Point(x(ConvertedVehicle.kmh(ms(last))), TOP_MM - 2.2), percent + " %", WORDS_MM));
        }
    }

    /** Resistance only grows with speed, so that a line that leaves the frame through its top does not come back. */
    private int lastInFrame(DoubleUnaryOperator newton) {
        int last = -1;
        while (last < STEPS && isInFrame(newton.applyAsDouble(ms(last + 1)))) {
            last++;
        }
        return last;
    }

    private boolean isInFrame(double newton) {
        return newton <= mostKn * NEWTON_IN_KN;
    }

    private double ms(int step) {
        return vehicle.traction().fastest() * step / STEPS;
    }

    /** As far as it lies in the frame. */
    private void curve(DoubleUnaryOperator newton, double penMm, boolean dashed) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double force = newton.applyAsDouble(ms(i));
            if (isInFrame(force)) {
                points.add(new Point(x(ConvertedVehicle.kmh(ms(i))), y(force)));
            }
        }
        if (points.size() > 1) {
            marks.add(new Mark.Line(points, penMm, dashed));
        }
    }

    private double x(double kmh) {
        return LEFT_MM + (RIGHT_MM - LEFT_MM) * kmh / fastestKmh;
    }

    private double y(double newton) {
        return FOOT_MM - (FOOT_MM - TOP_MM) * newton / (mostKn * NEWTON_IN_KN);
    }

    private static String plain(double whole) {
        return BigDecimal.valueOf(whole).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }
}
