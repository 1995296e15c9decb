package boltlore.report.xlsx;

import boltlore.report.Look;

/**
 * What each look is made of: type size, weight, band and rules. Sizes are for A4 before it is fitted to the width.
 *
 * @param points size of the type
 * @param band grey behind the cell as RRGGBB, or empty
 */
record Dress(int points, boolean bold, String band, String left, String right, String top, String bottom) {

    static final String TYPEFACE = "Arial";
    static final int BODY_POINTS = 9;

    private static final String NONE = "";
    private static final String HAIR = "hair";
    private static final String THIN = "thin";
    private static final String MEDIUM = "medium";
    private static final String LIGHT_GREY = "E8E8E8";

    static Dress of(Look look) {
        return switch (look) {
            case TITLE -> new Dress(16, true, NONE, NONE, NONE, NONE, MEDIUM);
            case HEADING -> new Dress(11, true, NONE, NONE, NONE, NONE, NONE);
            case NOTE -> boxed(false, THIN);
            case CAUTION -> boxed(false, MEDIUM);
            case LABEL -> new Dress(8, false, NONE, NONE, NONE, NONE, NONE);
            case VALUE -> ruled(true, NONE, NONE, HAIR);
            case COLUMN_HEADING -> ruled(true, NONE, MEDIUM, MEDIUM);
            case PLAIN -> ruled(false, NONE, NONE, HAIR);
            case GROUP -> ruled(true, LIGHT_GREY, THIN, THIN);
            case SUBTOTAL -> ruled(true, NONE, THIN, THIN);
            case TOTAL -> ruled(true, NONE, MEDIUM, "double");
            case HANDWRITTEN -> boxed(false, THIN);
            case SIGNATURE -> ruled(false, NONE, NONE, THIN);
        };
    }

    private static Dress boxed(boolean bold, String rule) {
        return new Dress(BODY_POINTS, bold, NONE, rule, rule, rule, rule);
    }

    private static Dress ruled(boolean bold, String band, String top, String bottom) {
        return new Dress(BODY_POINTS, bold, band, NONE, NONE, top, bottom);
    }
}
