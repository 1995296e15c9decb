package boltlore.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a value reads as text: a decimal point, no digit grouping, dates as in ISO 8601. */
public final class Printed {

    private Printed() {}

    /** In a column whose heading says the unit. */
    public static String inColumn(Kind kind, Cell cell) {
        if (cell instanceof Cell.Words words) {
            return words.text();
        } else if (cell instanceof Cell.Figure figure) {
            return figure(kind, figure.value());
        } else if (cell instanceof Cell.Worked worked) {
            return figure(kind, worked.result());
        }
        return cell instanceof Cell.Day day ? day.value().toString() : "";
    }

    /** Where nothing else says the unit: '12.50 EUR', '38 %'. */
    public static String alone(Kind kind, Cell cell) {
        String text = inColumn(kind, cell);
        boolean number = cell instanceof Cell.Figure || cell instanceof Cell.Worked;
        return number ? text + unit(kind) : text;
    }

    /** What follows a number that stands alone, with a blank before it; empty where there is nothing to say. */
    public static String unit(Kind kind) {
        return switch (kind.form()) {
            case MONEY -> " " + kind.currency();
            case PERCENT -> " %";
            case TEXT, WHOLE, DECIMAL, QUANTITY, DATE, TICK, BLANK, SIGNATURE -> "";
        };
    }

    private static String figure(Kind kind, BigDecimal value) {
        return rounded(kind, value).toPlainString();
    }

    /** The number whose plain digits are printed: to the kind's scale, or else without zeros at the end. */
    public static BigDecimal rounded(Kind kind, BigDecimal value) {
        return switch (kind.form()) {
            case DECIMAL, MONEY, PERCENT -> value.setScale(kind.scale(), RoundingMode.HALF_UP);
            case TEXT, WHOLE, QUANTITY, DATE, TICK, BLANK, SIGNATURE -> value.stripTrailingZeros();
        };
    }
}
