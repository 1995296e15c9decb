package boltlore.report.drawing;

import java.util.List;

/**
 * A drawing on white paper.
 *
 * @param says in words what it shows, for those who cannot see it
 */
public record Drawing(double widthMm, double heightMm, String says, List<Mark> marks) {

    /**
     * Width that the columns of an upright page of A4 take on paper in whatever typeface stands in for Arial; a drawing of
     * that width is printed at its own size.
     */
    public static final double PORTRAIT_MM = 170;

    /** The same of a page that lies across. */
    public static final double LANDSCAPE_MM = 250;

    public Drawing {
        marks = List.copyOf(marks);
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("A drawing has a size: " + widthMm + " x " + heightMm);
        }
    }
}
