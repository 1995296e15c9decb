package boltlore.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in plain digits: with a decimal point, without an exponent, without zeros at the end. */
public final class Digits {

    private Digits() {}

    /** '1062', '1997.5'. */
    public static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    /** The same with so many decimals at most, rounded half-up. */
    public static String upTo(BigDecimal number, int decimals) {
        return rounded(number, decimals).toPlainString();
    }

    /** The number with three decimals at most, for programs; two that print alike are equal. */
    public static BigDecimal thousandths(BigDecimal number) {
        return rounded(number, 3);
    }

    private static BigDecimal rounded(BigDecimal number, int decimals) {
        return number.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    }
}
