package boltlore.report.drawing;

import java.util.List;
import java.util.stream.Stream;

/** What a pen leaves on the paper. */
public sealed interface Mark {

    /** Pen for outlines. */
    double THICK_MM = 0.5;

    /** Pen for dimension lines, hatching and what is left over. */
    double THIN_MM = 0.2;

    /**
     * A line through points; closed where the last is the first.
     *
     * @param dashed drawn in dashes of 2 mm with gaps of 1 mm
     */
    record Line(List<Point> points, double penMm, boolean dashed) implements Mark {
        public Line {
            points = List.copyOf(points);
        }

        boolean isClosed() {
            return points.size() > 2 && points.get(0).equals(points.get(points.size() - 1));
        }

        /** Without the last where it is the first again. */
        Stream<Point> openPoints() {
            return points.stream().limit(points.size() - (isClosed() ? 1 : 0));
        }
    }

    /**
     * Words, centred on a point or beginning there.
     *
     * @param at middle of the words, or their left end; half the height of capitals above the foot of the letters
     * @param heightMm of capitals; tails of small letters reach 0.31 of it below the foot
     */
    record Lettering(Point at, String text, double heightMm, boolean centred) implements Mark {

        public double widthMm() {
            return widthMm(text, heightMm);
        }

        public static double widthMm(String text, double heightMm) {
            return Typeface.width(text) * heightMm;
        }

        double leftMm() {
            return centred ? at.xMm() - widthMm() / 2 : at.xMm();
        }

        double footMm() {
            return at.yMm() + heightMm / 2;
        }
    }

    /**
     * A text that machines read.
     *
     * @param at its upper left corner
     * @param sideMm of the dark squares; the white around it is left by who draws
     * @param squares what is drawn of the text
     */
    record Code(Point at, String text, double sideMm, MachineCode.Squares squares) implements Mark {

        /** The code of that text. */
        public Code(Point at, String text, double sideMm) {
            this(at, text, sideMm, MachineCode.squares(text));
        }
    }

    static Mark outline(List<Point> corners) {
        return new Line(closed(corners), THICK_MM, false);
    }

    static Mark dashed(List<Point> corners) {
        return new Line(closed(corners), THIN_MM, true);
    }

    static Mark line(Point from, Point to) {
        return new Line(List.of(from, to), THIN_MM, false);
    }

    static Mark centred(Point at, String text, double heightMm) {
        return new Lettering(at, text, heightMm, true);
    }

    static Mark from(Point at, String text, double heightMm) {
        return new Lettering(at, text, heightMm, false);
    }

    private static List<Point> closed(List<Point> corners) {
        return Stream.concat(corners.stream(), corners.stream().limit(1)).toList();
    }
}
