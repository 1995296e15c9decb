package boltlore.report.xlsx;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.Kind.Form;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Table;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How wide a column would be, in characters of the body type, air included.
 *
 * @param least below this, figures turn into a row of number signs and words are cut
 * @param usual with text wrapped where the column says so
 * @param full with nothing wrapped
 * @param texts widths of the column's texts, where it holds text
 */
record Need(double least, double usual, double full, List<Double> texts) {

    private static final double AIR = 1.6;
    /** Bold is about a tenth wider. */
    private static final double BOLD = 1.1;

    /** The blank after a figure. */
    private static final double POINT = 0.5;

    private static final double INDENT = 1.5;
    private static final int LONGEST_WORD_KEPT = 22;

    Need(double least, double usual, double full) {
        this(least, usual, full, List.of());
    }

    static Need fixed(double width) {
        return new Need(width, width, width);
    }

    /** Of text that may be wrapped at that width. */
    static Need text(double length, double widest) {
        double usual = Math.min(length, widest) + AIR;
        return new Need(usual, usual, length + AIR);
    }

    /** Whether it can be made narrower or wider without harm. */
    boolean gives() {
        return full > usual || usual > least;
    }

    /** Lines that all its texts together take at that width. */
    double lines(double width) {
        double lines = 0;
        for (double text : texts) {
            lines += Math.ceil(text / (width - AIR));
        }
        return lines;
    }

    static List<Need> of(Table table) {
        return IntStream.range(0, table.columns().size())
                .mapToObj(i -> of(table, i))
                .toList();
    }

    private static Need of(Table table, int i) {
        Column column = table.columns().get(i);
        double heading = Type.longestWord(column.headingWithUnit()) * BOLD;
        return switch (column.kind().form()) {
            case TEXT -> text(table, i, heading);
            case WHOLE, DECIMAL, QUANTITY, MONEY, PERCENT, DATE -> fixed(Math.max(heading, figures(table, i)) + AIR);
            case TICK -> fixed(Math.max(heading + AIR, 6));
            case BLANK ->
                new Need(Math.max(heading + AIR, 10), Math.max(heading + AIR, 12), Math.max(heading + AIR, 18));
            case SIGNATURE ->
                new Need(Math.max(heading + AIR, 14), Math.max(heading + AIR, 18), Math.max(heading + AIR, 26));
        };
    }

    private static Need text(Table table, int i, double heading) {
        Column column = table.columns().get(i);
        double longest = 0;
        double longestWord = 0;
        List<Double> texts = new ArrayList<>();
        for (Row row : table.rows()) {
            String text = Printed.inColumn(column.kind(), row.cells().get(i));
            double length = Type.width(text);
            texts.add(length);
            longest = Math.max(longest, length);
            if (length > longestWord) {
                longestWord = Math.max(longestWord, Type.longestWord(text));
            }
        }
        double air = AIR + (followsFigures(table, i) ? INDENT : 0);
        double least = Math.max(heading, Math.min(longestWord, LONGEST_WORD_KEPT)) + air;
        double usual = Math.max(least, Math.min(longest, column.widest()) + air);
        return new Need(least, usual, Math.max(usual, longest + air), texts);
    }

    /** Text next to figures stands a little away from them. */
    static boolean followsFigures(Table table, int i) {
        return i > 0
                && !table.columns().get(i).kind().form().isNumber()
                && table.columns().get(i - 1).kind().form().isNumber();
    }

    private static double figures(Table table, int i) {
        Column column = table.columns().get(i);
        double widest = 0;
        for (Row row : table.rows()) {
            double width = figure(column.kind(), row.cells().get(i));
            widest = Math.max(widest, width * (row.isPlain() ? 1 : BOLD));
        }
        return widest;
    }

    private static double figure(Kind kind, Cell cell) {
        BigDecimal number = number(cell);
        if (number == null) {
            String text = Printed.inColumn(kind, cell);
            return spaced(kind, Type.width(text), text.length());
        }
        BigDecimal shown = Printed.rounded(kind, number);
        return spaced(kind, Type.width(shown), Type.letters(shown));
    }

    private static @Nullable BigDecimal number(Cell cell) {
        if (cell instanceof Cell.Figure figure) {
            return figure.value();
        }
        return cell instanceof Cell.Worked worked ? worked.result() : null;
    }

    /** With the commas and the blank that the number's format adds. */
    private static double spaced(Kind kind, double width, int letters) {
        double commas = kind.form() == Form.MONEY ? Math.max(0, letters - 4) / 6.0 : 0;
        return width + POINT + commas;
    }
}
