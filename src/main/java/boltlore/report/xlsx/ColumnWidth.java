package boltlore.report.xlsx;

import boltlore.report.Column;
import boltlore.report.Kind.Form;
import boltlore.report.Printed;
import boltlore.report.Row;
import boltlore.report.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How wide a column would be, in characters of the body type, air included.
 *
 * @param least below this, figures turn into a row of number signs and words are cut
 * @param usual with text wrapped where the column says so
 * @param full with nothing wrapped
 * @param texts heading and texts, where it holds text that may be wrapped
 * @param high lines that a row of it takes anyway
 */
record ColumnWidth(double least, double usual, double full, List<String> texts, int high) {

    private static final double AIR = 1.6;
    /** Bold is about a tenth wider. */
    private static final double BOLD = 1.1;

    /** The blank after a figure. */
    private static final double POINT = 0.5;

    static final double INDENT = 1.5;

    /** Of a code with the white around it. */
    private static final double CODE = LookStyle.CODE / PageLayout.POINTS_PER_CHARACTER + 0.2;

    /** Lines beside a box for the pen, which is higher than a line. */
    private static final int BESIDE_A_BOX = 2;

    private static final double WIDEST_BESIDE = 90;
    private static final double LEAST_PROSE = 18;
    private static final int LONGEST_WORD_KEPT = 22;

    static ColumnWidth fixed(double width) {
        return new ColumnWidth(width, width, width, List.of(), 1);
    }

    /** Of text that may be wrapped at that width. */
    static ColumnWidth text(double length, double widest) {
        double usual = Math.min(length, widest) + AIR;
        return new ColumnWidth(usual, usual, length + AIR, List.of(), 1);
    }

    /** Of a text that may go on in the next line at any word. */
    static ColumnWidth prose(double length, double widest) {
        double usual = Math.min(length, widest) + AIR;
        return new ColumnWidth(Math.min(usual, LEAST_PROSE), usual, length + AIR, List.of(), 1);
    }

    /** Of a box for the pen. */
    private static ColumnWidth box(double heading, double least, double usual, double full) {
        double head = heading + AIR + INDENT;
        return new ColumnWidth(
                Math.max(head, least), Math.max(head, usual), Math.max(head, full), List.of(), BESIDE_A_BOX);
    }

    /** Whether it can be made narrower or wider without harm. */
    boolean gives() {
        return full > usual || usual > least;
    }

    /** Whether its texts may be wrapped. */
    boolean isText() {
        return !texts.isEmpty();
    }

    int rows() {
        return texts.size();
    }

    /** Lines that its text in that row takes at that width, one at least. */
    int lines(int row, double width) {
        return row < texts.size() ? FontMetrics.lines(texts.get(row), width - LookStyle.EDGES) : 1;
    }

    /** Of the columns that are printed, which are the first. */
    static List<ColumnWidth> of(Table table) {
        return IntStream.range(0, onPaper(table)).mapToObj(i -> of(table, i)).toList();
    }

    /** Of the columns beside the paper, where nothing needs to be wrapped. */
    static List<Double> beside(Table table) {
        return IntStream.range(onPaper(table), table.columns().size())
                .mapToObj(i -> Math.min(WIDEST_BESIDE, of(table, i).full()))
                .toList();
    }

    static int onPaper(Table table) {
        return (int) table.columns().stream().takeWhile(Column::onPaper).count();
    }

    private static ColumnWidth of(Table table, int i) {
        Column column = table.columns().get(i);
        double heading = FontMetrics.longestWord(column.headingWithUnit()) * BOLD;
        return switch (column.kind().form()) {
            case TEXT -> text(table, i, heading);
            case WHOLE, DECIMAL, QUANTITY, MONEY, PERCENT -> fixed(Math.max(heading, figures(table, i)) + AIR);
            case DATE -> fixed(Math.max(heading, figures(table, i)) + AIR + POINT);
            case TICK -> fixed(Math.max(heading + AIR + INDENT, 6));
            case CODE -> fixed(Math.max(heading + AIR, CODE));
            case BLANK ->
                column.widest() == Column.USUAL_WIDEST
                        ? box(heading, 10, 12, 18)
                        : box(heading, column.widest(), column.widest(), column.widest());
            case SIGNATURE -> box(heading, 13, 18, 26);
        };
    }

    private static ColumnWidth text(Table table, int i, double heading) {
        Column column = table.columns().get(i);
        double longest = 0;
        double longestWord = 0;
        List<String> texts = new ArrayList<>(List.of(column.headingWithUnit()));
        for (Row row : table.rows()) {
            String text = Printed.inColumn(column.kind(), row.cells().get(i));
            double length = FontMetrics.width(text);
            texts.add(text);
            longest = Math.max(longest, length);
            if (length > longestWord) {
                longestWord = Math.max(longestWord, FontMetrics.longestWord(text));
            }
        }
        double air = AIR + (followsFigures(table, i) ? INDENT : 0);
        double least = Math.max(heading, Math.min(longestWord, LONGEST_WORD_KEPT)) + air;
        double usual = Math.max(least, Math.min(longest, column.widest()) + air);
        return new ColumnWidth(least, usual, Math.max(usual, longest + air), texts, 1);
    }

    /** Text next to figures stands a little away from them. */
    static boolean followsFigures(Table table, int i) {
        return i > 0
                && !table.columns().get(i).kind().form().isNumber()
                && table.columns().get(i - 1).kind().form().isNumber();
    }

    /** With the commas and the blank that the number's format adds. */
    private static double figures(Table table, int i) {
        Column column = table.columns().get(i);
        double widest = 0;
        for (Row row : table.rows()) {
            String text = Printed.inColumn(column.kind(), row.cells().get(i));
            double commas = column.kind().form() == Form.MONEY ? Math.max(0, text.length() - 4) / 6.0 : 0;
            double width = FontMetrics.width(text) + POINT + commas;
            widest = Math.max(widest, width * (row.isPlain() ? 1 : BOLD));
        }
        return widest;
    }
}
