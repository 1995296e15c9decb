package boltlore.trades.charging;

import java.math.BigDecimal;

/** A quantity that a formula divides by or takes the logarithm of. */
final class Positive {

    private Positive() {}

    static BigDecimal number(String name, BigDecimal number) {
        if (number.signum() <= 0) {
            throw new IllegalArgumentException(name + " must be above 0, not " + number.toPlainString());
        }
        return number;
    }
}
