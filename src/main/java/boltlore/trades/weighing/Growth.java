package boltlore.trades.weighing;

import boltlore.catalogue.MassLimit;
import boltlore.measure.Percent;
import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/**
 * The mass before and after conversion, nobody in the vehicle, which is the stricter way: a driver in both would make
 * the change a smaller share.
 *
 * @param limit of the order's market, or null where the workshop knows of none
 */
public record Growth(
        BigDecimal beforeKg, BigDecimal afterKg, @Nullable MassLimit limit) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Change in per cent of the mass before conversion; below 0 where the vehicle became lighter. */
    public BigDecimal changePercent() {
        return afterKg.subtract(beforeKg).multiply(HUNDRED).divide(beforeKg, MathContext.DECIMAL128);
    }

    /** Kilograms above the market's limit; 0 or below where it is kept, or there is none. */
    public BigDecimal overKg() {
        return limit == null
                ? BigDecimal.ZERO
                : afterKg.subtract(beforeKg.multiply(Percent.fraction(limit.mostPercent())));
    }

    public boolean exceeded() {
        return overKg().signum() > 0;
    }
}
