package boltlore.trades.charging;

import boltlore.measure.Digits;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures in sentences, each with its unit: rounded half up; kW and h with one decimal, others without zeros at
 * the end. */
public final class NumberFormats {

    private static final int KILO = 3;

    private NumberFormats() {}

    public static String number(BigDecimal number, int decimals) {
        return Digits.upTo(number, decimals);
    }

    /** The number itself, rounded half up, without zeros at the end. */
    static BigDecimal rounded(BigDecimal number, int decimals) {
        return new BigDecimal(number(number, decimals));
    }

    public static String volts(BigDecimal volts) {
        return number(volts, 1) + " V";
    }

    public static String amps(BigDecimal amps) {
        return number(amps, 1) + " A";
    }

    public static String kilowatts(BigDecimal kilowatts) {
        return tenths(kilowatts) + " kW";
    }

    public static String hours(BigDecimal hours) {
        return tenths(hours) + " h";
    }

    private static String tenths(BigDecimal number) {
        return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** '201.6 kΩ', or in Ω below a thousand. */
    public static String ohm(BigDecimal ohm) {
        boolean large = ohm.compareTo(BigDecimal.ONE.movePointRight(KILO)) >= 0;
        return large ? number(ohm.movePointLeft(KILO), 1) + " kΩ" : number(ohm, 1) + " Ω";
    }
}
