package boltlore.sheets.shipping;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as sentences and drawings say them; tables round by themselves. */
final class Figures {

    private Figures() {}

    /** '12.5 kg', one decimal at most. */
    static String kg(BigDecimal kg) {
        return number(kg, 1) + " kg";
    }

    static String number(BigDecimal number, int scale) {
        BigDecimal rounded = number.setScale(scale, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
