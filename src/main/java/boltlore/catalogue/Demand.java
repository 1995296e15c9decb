package boltlore.catalogue;

import java.math.BigDecimal;

/** What a test asks of its reading; numbers in the unit of its instrument. */
public sealed interface Demand {

    record AtLeast(BigDecimal least) implements Demand {}

    record AtMost(BigDecimal most) implements Demand {}

    /** Both ends included. */
    record Between(BigDecimal least, BigDecimal most) implements Demand {}

    record InState(FoundState state) implements Demand {}

    /**
     * Worked out for each kit.
     *
     * @param withinPercent how far a reading may lie from the figure, where it is a target and no limit; else 0
     */
    record Computed(LimitRule rule, BigDecimal withinPercent) implements Demand {}
}
