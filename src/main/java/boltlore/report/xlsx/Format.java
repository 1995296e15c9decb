package boltlore.report.xlsx;

import boltlore.report.Kind;
import boltlore.report.Printed;

/** Number formats as ECMA-376 part 1, 18.8.31 writes them. */
final class Format {

    static final String GENERAL = "General";

    private Format() {}

    /** Under a heading that says the unit; a blank as wide as a point keeps figures clear of a rule at their right. */
    static String inColumn(Kind kind) {
        return plain(kind).equals(GENERAL) || !kind.form().isNumber() ? plain(kind) : plain(kind) + "_.";
    }

    /** Where nothing else says the unit. */
    static String alone(Kind kind) {
        String unit = Printed.unit(kind);
        return unit.isEmpty() ? plain(kind) : plain(kind) + "\"" + unit + "\"";
    }

    private static String plain(Kind kind) {
        return switch (kind.form()) {
            case DATE -> "yyyy\\-mm\\-dd";
            case WHOLE -> "0";
            case DECIMAL, PERCENT -> "0" + decimals(kind.scale());
            case MONEY -> "#,##0" + decimals(kind.scale());
            case TEXT, QUANTITY, TICK, BLANK, SIGNATURE -> GENERAL;
        };
    }

    private static String decimals(int scale) {
        return scale == 0 ? "" : "." + "0".repeat(scale);
    }
}
