package boltlore.report.xlsx;

import boltlore.report.Look;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.VerticalAlignment;

/**
 * What each look is made of: type size, weight, band and rules. Sizes are for A4 before it is fitted to the width.
 *
 * @param points size of the type
 * @param band whether grey stands behind the cell
 */
record LookStyle(
        int points,
        boolean bold,
        boolean band,
        BorderStyle sides,
        BorderStyle top,
        BorderStyle bottom,
        VerticalAlignment vertical) {

    static final String TYPEFACE = "Arial";
    static final int BODY_POINTS = 9;
    /** Opaque. */
    static final byte[] LIGHT_GREY = {(byte) 0xFF, (byte) 0xE8, (byte) 0xE8, (byte) 0xE8};

    /** Between blocks, in points. */
    static final double GAP = 6;

    /** No row may be taller (ECMA-376 has no limit, spreadsheet programs have). */
    static final double TALLEST = 409;

    /** A box that a reading or a name is written into: 9 mm on paper, where the page is shrunk too. */
    static final double BY_HAND = 28.6;

    /** A box for a tick. */
    static final double TICK = 11.7;

    /** A code of 21 squares of 0.26 mm and three of white on each side, which the cell's own edges add to: 7 mm. */
    static final double CODE = 19.9;

    private static final double LINE_PER_POINT = 1.15;
    private static final double AIR = 0.7;

    /** What a cell keeps clear at its two sides, in characters. */
    static final double EDGES = 1.3;

    private static final Map<Look, LookStyle> ALL = new EnumMap<>(Look.class);

    static {
        for (Look look : Look.values()) {
            ALL.put(look, make(look));
        }
    }

    static LookStyle of(Look look) {
        return Objects.requireNonNull(ALL.get(look));
    }

    private static LookStyle make(Look look) {
        return switch (look) {
            case TITLE -> words(16, true, BorderStyle.MEDIUM);
            case HEADING -> words(11, true, BorderStyle.NONE);
            case LABEL -> words(BODY_POINTS, false, BorderStyle.NONE);
            case VALUE -> words(BODY_POINTS, true, BorderStyle.HAIR);
            case SIGNATURE -> words(BODY_POINTS, false, BorderStyle.THIN);
            case NOTE, HANDWRITTEN -> boxed(BorderStyle.THIN);
            case CAUTION -> boxed(BorderStyle.MEDIUM);
            case COLUMN_HEADING -> ruled(true, false, BorderStyle.MEDIUM, BorderStyle.MEDIUM, VerticalAlignment.BOTTOM);
            case PLAIN -> row(false, false, BorderStyle.NONE, BorderStyle.HAIR);
            case GROUP -> row(true, true, BorderStyle.THIN, BorderStyle.THIN);
            case SUBTOTAL -> row(true, false, BorderStyle.THIN, BorderStyle.THIN);
            case TOTAL -> row(true, false, BorderStyle.MEDIUM, BorderStyle.DOUBLE);
        };
    }

    private static LookStyle words(int points, boolean bold, BorderStyle bottom) {
        return new LookStyle(points, bold, false, BorderStyle.NONE, BorderStyle.NONE, bottom, VerticalAlignment.BOTTOM);
    }

    private static LookStyle boxed(BorderStyle rule) {
        return new LookStyle(BODY_POINTS, false, false, rule, rule, rule, VerticalAlignment.CENTER);
    }

    private static LookStyle row(boolean bold, boolean band, BorderStyle top, BorderStyle bottom) {
        return ruled(bold, band, top, bottom, VerticalAlignment.CENTER);
    }

    private static LookStyle ruled(
            boolean bold, boolean band, BorderStyle top, BorderStyle bottom, VerticalAlignment vertical) {
        return new LookStyle(BODY_POINTS, bold, band, BorderStyle.NONE, top, bottom, vertical);
    }

    /** Of a row, in points, from the text in it, so that it is the same on every machine. */
    static double height(Look look, String text, double width) {
        LookStyle style = of(look);
        double scale = (double) BODY_POINTS / style.points() / (style.bold() ? 1.08 : 1);
        int lines = FontMetrics.lines(text, (width - EDGES) * scale);
        return lines * style.points() * LINE_PER_POINT + AIR;
    }

    /** Of one line of body type. */
    static double lineHeight() {
        return BODY_POINTS * LINE_PER_POINT + AIR;
    }
}
