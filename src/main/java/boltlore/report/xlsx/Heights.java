package boltlore.report.xlsx;

import boltlore.report.Look;

/** Row heights from the text in them, so that they are the same on every machine. */
final class Heights {

    static final double GAP = 6;

    /** No row may be taller (ECMA-376 has no limit, spreadsheet programs have). */
    static final double TALLEST = 409;

    static final double CHART_ROW = 14;

    /** A box that a pen fits in. */
    static final double BY_HAND = 20;

    static final double SIGNATURE = 30;

    private static final double LINE_PER_POINT = 1.3;
    private static final double AIR = 3;

    /** What a cell keeps clear at its two sides, in characters. */
    private static final double EDGES = 1.3;

    private Heights() {}

    static double of(Look look, String text, double width) {
        Dress dress = Dress.of(look);
        double scale = (double) Dress.BODY_POINTS / dress.points() / (dress.bold() ? 1.08 : 1);
        int lines = Type.lines(text, (width - EDGES) * scale);
        return lines * dress.points() * LINE_PER_POINT + AIR;
    }

    /** Of one line of body type. */
    static double line() {
        return Dress.BODY_POINTS * LINE_PER_POINT + AIR;
    }
}
