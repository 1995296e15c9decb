package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A condition of a market on conversions, beside that on their mass.
 *
 * @param says in a sentence, for the weight statement
 * @param leastPercent of the donor's engine that the motor has at least, for power; null where there is no least
 * @param mostPercent of the donor's engine that the motor has at most, for power; null where there is no most
 * @param leastYears that the donor is old at least, for age; null otherwise
 */
public record MarketCondition(
        Judge judge,
        String says,
        @Nullable BigDecimal leastPercent,
        @Nullable BigDecimal mostPercent,
        @Nullable Integer leastYears) {

    /** What the condition is held against. */
    public enum Judge {
        /** Power of the kit's motors against that of the donor's engine. */
        POWER,
        /** The laden vehicle against its permitted mass. */
        GROSS_MASS,
        /** Each axle against what it may carry. */
        AXLE_LOADS,
        /** The donor's build date against the day of the order. */
        AGE,
        /** Papers of the vehicle, which only a person can look at. */
        PERSON
    }
}
