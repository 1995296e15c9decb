package boltlore.report.drawing;

import java.util.List;
import java.util.stream.IntStream;

/** Corners of what is drawn again and again. */
public final class Outlines {

    private static final int CORNERS = 36;

    private Outlines() {}

    public static List<Point> box(double left, double top, double right, double bottom) {
        return List.of(new Point(left, top), new Point(right, top), new Point(right, bottom), new Point(left, bottom));
    }

    /** So many corners that no eye sees them, at the same places on every machine. */
    public static List<Point> circle(double x, double y, double radius) {
        return IntStream.range(0, CORNERS)
                .mapToDouble(corner -> 2 * StrictMath.PI * corner / CORNERS)
                .mapToObj(angle -> new Point(x + radius * StrictMath.cos(angle), y + radius * StrictMath.sin(angle)))
                .toList();
    }
}
