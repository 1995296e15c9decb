package boltlore.scale;

import boltlore.report.drawing.Drawing;
import boltlore.report.drawing.Mark;
import boltlore.report.drawing.Point;
import boltlore.scale.SideBySide.Measured;
import boltlore.scale.SideBySide.Question;
import boltlore.scale.SideBySide.Who;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How the ways stand beside each other, as a table and as a drawing. */
final class SideBySideTable {

    private static final double ROW_MM = 4;
    private static final double LETTER_MM = 2;
    private static final double FIRST_MM = 8;
    private static final int DECADES = 7;
    private static final double BARS_MM = 62;
    private static final double DECADE_MM = 14;
    /** Where the scale begins: a hundredth of a millisecond. */
    private static final double LEAST_MS = 0.01;

    private SideBySideTable() {}

    /** Milliseconds of this program, and how many times as long the others take. */
    static String text(List<Measured> all) {
        StringBuilder text = new StringBuilder(row("milliseconds an answer", heads()));
        for (Measured each : all) {
            text.append(title(each)).append('\n');
            each.milliseconds().forEach((question, times) -> text.append(row("  " + question.says, cells(times))));
        }
        return text.toString();
    }

    private static String title(Measured each) {
        return each.family() + ", " + each.options() + " options, valid orders: "
                + (each.orders().length() > 20
                        ? "about 10 to the power of " + (each.orders().length() - 1)
                        : each.orders());
    }

    private static String[] heads() {
        List<String> heads = new ArrayList<>(List.of(Who.PROGRAM.says));
        for (Who who : Who.values()) {
            if (who != Who.PROGRAM) {
                heads.add(who.says);
                heads.add("times as long");
            }
        }
        return heads.toArray(String[]::new);
    }

    private static String[] cells(Map<Who, Double> times) {
        Double program = times.get(Who.PROGRAM);
        List<String> cells = new ArrayList<>(List.of(shown(program)));
        for (Who who : Who.values()) {
            if (who != Who.PROGRAM) {
                Double other = times.get(who);
                cells.add(shown(other));
                cells.add(
                        program == null || other == null || (program + other) == Double.POSITIVE_INFINITY
                                ? "-"
                                : String.format(Locale.ROOT, other < program ? "%.2f" : "%,.1f", other / program));
            }
        }
        return cells.toArray(String[]::new);
    }

    private static String shown(@Nullable Double milliseconds) {
        if (milliseconds == null) {
            return "-";
        }
        return milliseconds.isInfinite() ? "not in time" : String.format(Locale.ROOT, "%,.2f", milliseconds);
    }

    private static String row(String first, String... others) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-30s", first));
        for (String other : others) {
            row.append(String.format(Locale.ROOT, "%16s", other));
        }
        return row.append('\n').toString();
    }

    /** Bars of all four questions together; each step to the right is ten times as long. */
    static Drawing drawing(List<Measured> all) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.from(
                new Point(2, 4),
                "All four questions, milliseconds; each vertical line is ten times the one before",
                LETTER_MM));
        double y = FIRST_MM;
        for (Measured each : all) {
            marks.add(Mark.from(new Point(2, y + ROW_MM / 2), title(each), LETTER_MM));
            double top = y + ROW_MM;
            y = top;
            for (Who who : Who.values()) {
                bar(marks, y, who, each.milliseconds().get(Question.ALL).get(who));
                y += ROW_MM;
            }
            for (int decade = 0; decade <= DECADES; decade++) {
                marks.add(Mark.line(new Point(at(decade), top), new Point(at(decade), y)));
            }
        }
        for (int decade = 0; decade <= DECADES; decade++) {
            String milliseconds =
                    BigDecimal.valueOf(LEAST_MS).movePointRight(decade).toPlainString();
            marks.add(Mark.centred(new Point(at(decade), y + ROW_MM / 2), milliseconds, LETTER_MM));
        }
        return new Drawing(
                Drawing.PORTRAIT_MM, y + 2 * ROW_MM, "Time for four questions by four ways of working", marks);
    }

    private static double at(int decade) {
        return BARS_MM + decade * DECADE_MM;
    }

    private static void bar(List<Mark> marks, double y, Who who, @Nullable Double milliseconds) {
        marks.add(Mark.from(new Point(8, y + ROW_MM / 2), who.says + ": " + shown(milliseconds), LETTER_MM));
        if (milliseconds != null && !milliseconds.isInfinite()) {
            double lengthMm = Math.max(0.5, Math.log10(milliseconds / LEAST_MS) * DECADE_MM);
            marks.add(Mark.outline(List.of(
                    new Point(BARS_MM, y + 0.6),
                    new Point(BARS_MM + lengthMm, y + 0.6),
                    new Point(BARS_MM + lengthMm, y + ROW_MM - 0.6),
                    new Point(BARS_MM, y + ROW_MM - 0.6))));
        }
    }
}
