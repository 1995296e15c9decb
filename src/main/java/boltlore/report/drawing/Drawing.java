package boltlore.report.drawing;

import java.util.List;

/**
 * A drawing on white paper.
 *
 * @param says in words what it shows, for those who cannot see it
 */
public record Drawing(double widthMm, double heightMm, String says, List<Mark> marks) {

    public Drawing {
        marks = List.copyOf(marks);
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("A drawing has a size: " + widthMm + " x " + heightMm);
        }
    }
}
