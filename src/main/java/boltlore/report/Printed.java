package boltlore.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** How a value reads as text, and with which digits it is data. Dates are as in ISO 8601. */
public final class Printed {

    /** Of a number in CSV and JSON: a gram in tonnes, a micrometre in metres. */
    private static final int MOST_DECIMALS = 6;

    /** Digits of a number in a workbook: beyond them nothing was ever measured. */
    private static final int SIGNIFICANT = 6;

    /** Beyond it stands what arithmetic leaves of a 0. */
    private static final int FINEST = 12;

    private Printed() {}

    /** In a column whose heading says the unit: a decimal point, no digit grouping. */
    public static String inColumn(Kind kind, Cell cell) {
        return cell instanceof Cell.Figure || cell instanceof Cell.Worked
                ? rounded(kind, number(cell)).toPlainString()
                : words(cell);
    }

    /** The same as people of that language write it, amounts of money with their thousands apart. */
    public static String inColumn(Kind kind, Cell cell, String language) {
        if (!(cell instanceof Cell.Figure || cell instanceof Cell.Worked)) {
            return words(cell);
        }
        BigDecimal number = rounded(kind, number(cell));
        DecimalFormat format =
                new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.forLanguageTag(language)));
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        format.setGroupingSize(3);
        format.setGroupingUsed(kind.form() == Kind.Form.MONEY);
        return format.format(number);
    }

    private static BigDecimal number(Cell cell) {
        return cell instanceof Cell.Worked worked ? worked.result() : ((Cell.Figure) cell).value();
    }

    private static String words(Cell cell) {
        if (cell instanceof Cell.Words words) {
            return words.text();
        }
        return cell instanceof Cell.Day day ? day.value().toString() : "";
    }

    /** Where nothing else says the unit: '12.50 EUR', '38 %'. */
    public static String alone(Kind kind, Cell cell) {
        return withUnit(kind, cell, inColumn(kind, cell));
    }

    /** The same as people of that language write it. */
    public static String alone(Kind kind, Cell cell, String language) {
        return withUnit(kind, cell, inColumn(kind, cell, language));
    }

    private static String withUnit(Kind kind, Cell cell, String text) {
        return cell instanceof Cell.Figure || cell instanceof Cell.Worked ? text + unit(kind) : text;
    }

    /** What follows a number that stands alone, with a blank before it; empty where there is nothing to say. */
    public static String unit(Kind kind) {
        String unit = kind.form() == Kind.Form.PERCENT ? "%" : kind.unit();
        return unit.isEmpty() ? "" : " " + unit;
    }

    /** The number whose plain digits are printed: to the kind's scale, or else without zeros at the end. */
    public static BigDecimal rounded(Kind kind, BigDecimal value) {
        return switch (kind.form()) {
            case DECIMAL, MONEY, PERCENT -> value.setScale(kind.scale(), RoundingMode.HALF_UP);
            case TEXT, WHOLE, QUANTITY, DATE, CODE, TICK, BLANK, SIGNATURE -> value.stripTrailingZeros();
        };
    }

    /**
     * The number as data: not with the few digits of the print, for sums of those go astray, but to the sixth decimal; at
     * least the digits of the print.
     */
    public static BigDecimal data(Kind kind, BigDecimal value) {
        BigDecimal known = value.setScale(Math.max(MOST_DECIMALS, kind.scale()), RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return known.scale() < kind.scale() ? known.setScale(kind.scale()) : known;
    }

    /** Numbers with the digits of {@link #data(Kind, BigDecimal)}, all else as it is printed. */
    public static String data(Kind kind, Cell cell) {
        return cell instanceof Cell.Figure || cell instanceof Cell.Worked
                ? data(kind, number(cell)).toPlainString()
                : words(cell);
    }

    /** The number as it is, unless it has digits that mean nothing, to go on calculating with in a workbook. */
    public static BigDecimal data(BigDecimal value) {
        int decimals = Math.min(FINEST, SIGNIFICANT + Math.max(0, value.scale() - value.precision()));
        return value.scale() <= decimals
                ? value
                : value.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    }
}
