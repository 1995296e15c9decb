package boltlore.trades.charging;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Bonding of conductive parts to the chassis: below 0.1 Ω at 0.2 A or more; a welded joint needs no measurement (UN
 * Regulation 100, bonding requirement).
 */
public final class Bonding {

    /** The resistance in Ω must be below this. */
    public static final BigDecimal LIMIT_OHM = new BigDecimal("0.1");

    /** The current in A must be at least this. */
    public static final BigDecimal LEAST_AMPS = new BigDecimal("0.2");

    private Bonding() {}

    /**
     * Whether a joint is bonded well enough; never at less than the least current.
     *
     * @param amps test current in A
     */
    public static boolean passes(BigDecimal ohm, BigDecimal amps) {
        return enough(amps) && ohm.signum() >= 0 && ohm.compareTo(LIMIT_OHM) < 0;
    }

    /** Whether a reading at that current counts at all. */
    public static boolean enough(BigDecimal amps) {
        return amps.compareTo(LEAST_AMPS) >= 0;
    }

    /** The voltage in V across a joint that is just at the limit. */
    public static BigDecimal dropAtLimitVolts(BigDecimal amps) {
        return LIMIT_OHM.multiply(amps);
    }

    /**
     * The resistance in Ω from voltage and current.
     *
     * @throws IllegalArgumentException where the current is not above 0
     */
    public static BigDecimal ohm(BigDecimal volts, BigDecimal amps) {
        return volts.divide(Positive.number("amps", amps), MathContext.DECIMAL128);
    }
}
