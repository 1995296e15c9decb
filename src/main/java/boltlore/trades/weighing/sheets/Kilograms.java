package boltlore.trades.weighing.sheets;

import boltlore.measure.Digits;
import java.math.BigDecimal;

/** Figures as sentences say them; tables round by themselves. */
final class Kilograms {

    private Kilograms() {}

    /** '1234.5 kg', without its sign. */
    static String kg(BigDecimal kg) {
        return number(kg.abs(), 1) + " kg";
    }

    /** '1234 mm', without its sign. */
    static String mm(BigDecimal mm) {
        return number(mm.abs(), 0) + " mm";
    }

    static String percent(BigDecimal percent) {
        return number(percent, 1) + " %";
    }

    static String number(BigDecimal number, int scale) {
        return Digits.upTo(number, scale);
    }
}
