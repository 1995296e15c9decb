package boltlore.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/** Per cents turned into factors with 34 significant digits (IEEE 754 decimal128). */
public final class Percent {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Percent() {}

    /** 25 → 0.25. */
    public static BigDecimal fraction(BigDecimal percent) {
        if (percent.signum() == 0 || percent.precision() > MathContext.DECIMAL128.getPrecision()) {
            return percent.divide(HUNDRED, MathContext.DECIMAL128);
        }
        // What that division comes to, digits and scale alike; it makes 34 digits first and takes 100 times as long.
        BigDecimal shortest = percent.scaleByPowerOfTen(-2).stripTrailingZeros();
        return shortest.scale() < percent.scale() ? shortest.setScale(percent.scale()) : shortest;
    }

    /** 25 → 1.25. */
    public static BigDecimal plus(BigDecimal percent) {
        return BigDecimal.ONE.add(fraction(percent));
    }

    /** 5 → 0.95: what is left when that share is lost. */
    public static BigDecimal rest(BigDecimal percent) {
        return BigDecimal.ONE.subtract(fraction(percent));
    }
}
