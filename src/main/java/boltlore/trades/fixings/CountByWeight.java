package boltlore.trades.fixings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Counting pieces on a scale; common practice, no source. */
public final class CountByWeight {

    private static final BigDecimal HALF_IN_PERCENT = BigDecimal.valueOf(50);
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final int PERCENT = 2;

    private CountByWeight() {}

    /**
     * Count = (gross − tare) / mass of one, rounded.
     *
     * @param gross mass with the container, in the same unit as the others
     * @param one mass of one piece, above 0
     * @return empty where the container weighs more than all together
     * @throws ArithmeticException where one weighs nothing
     */
    public static Optional<Integer> count(BigDecimal gross, BigDecimal tare, BigDecimal one) {
        BigDecimal net = gross.subtract(tare);
        return net.signum() < 0
                ? Optional.empty()
                : Optional.of(net.divide(one, 0, RoundingMode.HALF_UP).intValueExact());
    }

    /** The mass of one must be known better than that, in per cent: one half divided by the count. */
    public static BigDecimal surePercent(BigDecimal count) {
        return HALF_IN_PERCENT.divide(count, MathContext.DECIMAL64);
    }

    /** A mass is known to half of its last digit; so many per cent of it. */
    public static BigDecimal knownPercent(BigDecimal one) {
        return one.ulp()
                .divide(TWO, MathContext.DECIMAL64)
                .movePointRight(PERCENT)
                .divide(one, MathContext.DECIMAL64);
    }

    /** Whether a count by weight is sure for so many, with a mass as exact as it is written. */
    public static boolean sure(BigDecimal count, BigDecimal one) {
        return knownPercent(one).compareTo(surePercent(count)) < 0;
    }
}
