package boltlore.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;

/** How a value reads as text: a decimal point, no digit grouping, dates as in ISO 8601. */
public final class Printed {

    private Printed() {}

    /** In a column whose heading says the unit. */
    public static String inColumn(Kind kind, Cell cell) {
        return cell.as(new Cell.Cases<>() {
            @Override
            public String empty() {
                return "";
            }

            @Override
            public String words(String text) {
                return text;
            }

            @Override
            public String figure(BigDecimal value) {
                return Printed.figure(kind, value);
            }

            @Override
            public String day(LocalDate value) {
                return value.toString();
            }

            @Override
            public String worked(Formula formula, BigDecimal result) {
                return Printed.figure(kind, result);
            }
        });
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
        return switch (kind.form()) {
            case DECIMAL, MONEY, PERCENT ->
                value.setScale(kind.scale(), RoundingMode.HALF_UP).toPlainString();
            case TEXT, WHOLE, QUANTITY, DATE, TICK, BLANK, SIGNATURE -> plain(value);
        };
    }

    /** Without zeros at the end, and never 1E+3. */
    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
