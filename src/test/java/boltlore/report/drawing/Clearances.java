package boltlore.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What keeps a drawing from being read: marks off the paper, words over one another, lines through words. */
public final class Clearances {

    private static final double ROUNDING_MM = 1e-6;

    private final Drawing drawing;
    private final List<Mark.Line> lines = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final List<String> found = new ArrayList<>();

    private Clearances(Drawing drawing) {
        this.drawing = drawing;
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Line line) {
                lines.add(line);
            } else if (mark instanceof Mark.Lettering lettering) {
                words.add(
                        new Words(lettering.text(), Typeface.outline(lettering).getBounds2D()));
            }
        }
    }

    public static void assertLegible(Drawing drawing) {
        assertThat(of(drawing)).as(drawing.says()).isEmpty();
    }

    static List<String> of(Drawing drawing) {
        Clearances clearances = new Clearances(drawing);
        clearances.onPaper();
        clearances.apart();
        clearances.struck();
        return clearances.found;
    }

    private void onPaper() {
        Rectangle2D paper = new Rectangle2D.Double(
                -ROUNDING_MM, -ROUNDING_MM, drawing.widthMm() + 2 * ROUNDING_MM, drawing.heightMm() + 2 * ROUNDING_MM);
        for (Mark.Line line : lines) {
            line.points().stream()
                    .filter(point -> !paper.contains(point.xMm(), point.yMm()))
                    .forEach(point -> found.add("off the paper: " + point));
        }
        words.stream().filter(each -> !paper.contains(each.ink())).forEach(each -> found.add("off the paper: " + each));
    }

    private void apart() {
        for (int i = 0; i < words.size(); i++) {
            for (int k = i + 1; k < words.size(); k++) {
                if (words.get(i).ink().intersects(words.get(k).ink())) {
                    found.add(words.get(i) + " over " + words.get(k));
                }
            }
        }
    }

    private void struck() {
        for (Words each : words) {
            for (Mark.Line line : lines) {
                for (int i = 1; i < line.points().size(); i++) {
                    Point from = line.points().get(i - 1);
                    Point to = line.points().get(i);
                    if (new Line2D.Double(from.xMm(), from.yMm(), to.xMm(), to.yMm()).intersects(each.ink())) {
                        found.add("a line from " + from + " to " + to + " through " + each);
                    }
                }
            }
        }
    }

    private record Words(String text, Rectangle2D ink) {}
}
