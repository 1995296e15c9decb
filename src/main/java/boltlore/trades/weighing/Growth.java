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

    /** Above the limit by more than what was computed may be wrong by. */
    public boolean exceeded() {
        return overKg().compareTo(toleranceKg()) > 0;
    }

    /** What the computed mass may be wrong by, in kg; 0 where there is no limit to hold it against. */
    public BigDecimal toleranceKg() {
        return limit == null ? BigDecimal.ZERO : afterKg.multiply(Percent.fraction(limit.tolerancePercent()));
    }

    /** What is said of the mass by the market's limit. */
    LimitCheck.Standing standing() {
        return exceeded()
                ? LimitCheck.Standing.ABOVE
                : undecided() ? LimitCheck.Standing.NOT_DECIDED : LimitCheck.Standing.WITHIN;
    }

    /** So near to the limit, below or above it, that only the weighbridge can tell. */
    public boolean undecided() {
        return limit != null && overKg().abs().compareTo(toleranceKg()) <= 0;
    }
}
