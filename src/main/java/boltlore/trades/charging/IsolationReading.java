package boltlore.trades.charging;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.Set;

/**
 * Isolation of one bus measured with a voltmeter and a known resistor (UN Regulation 100, revision 2, 1.2.3.4 and
 * 1.2.3.5).
 *
 * <p>The resistor goes between the chassis and the pole that showed the greater voltage against it.
 *
 * @param packVolts between the two poles, in V, above 0
 * @param chassisVolts the greater voltage between a pole and the chassis, in V, above 0
 * @param withResistorVolts the same voltage with the resistor in place, in V, above 0
 * @param resistorOhm the known resistor in Ω, above 0
 */
public record IsolationReading(
        BigDecimal packVolts, BigDecimal chassisVolts, BigDecimal withResistorVolts, BigDecimal resistorOhm) {

    private static final BigDecimal LEAST_METER_OHM = BigDecimal.valueOf(10_000_000);
    private static final BigDecimal WINDOW = new BigDecimal("0.2");

    public IsolationReading {
        Positive.number("packVolts", packVolts);
        Positive.number("chassisVolts", chassisVolts);
        Positive.number("withResistorVolts", withResistorVolts);
        Positive.number("resistorOhm", resistorOhm);
    }

    /** What makes readings good for nothing. */
    public enum Flaw {
        /** The meter's own resistance is below 10 MΩ. */
        METER_LOADS_THE_BUS,
        /** The resistor is more than 20 % off the limit in Ω per V times the nominal voltage. */
        RESISTOR_UNSUITED,
        /** The voltage did not fall, so nothing can be said. */
        VOLTAGE_DID_NOT_FALL,
        /** A pole shows more against the chassis than the poles against each other. */
        MORE_THAN_THE_PACK
    }

    /** Ri = Ro × Vb × (1/V1' − 1/V1), in Ω; nothing to go by where {@link #flaws} finds one. */
    public BigDecimal isolationOhm() {
        BigDecimal share = inverse(withResistorVolts).subtract(inverse(chassisVolts));
        return resistorOhm.multiply(packVolts).multiply(share);
    }

    public BigDecimal ohmPerVolt() {
        return isolationOhm().divide(packVolts, MathContext.DECIMAL128);
    }

    public boolean passes(BigDecimal limitOhmPerVolt) {
        return ohmPerVolt().compareTo(limitOhmPerVolt) >= 0;
    }

    /**
     * What is wrong with the readings.
     *
     * @param meterOhm own resistance of the meter
     * @param suitedOhm what the resistor should about be: the limit in Ω per V times the pack's nominal voltage
     */
    public Set<Flaw> flaws(BigDecimal meterOhm, BigDecimal suitedOhm) {
        Set<Flaw> flaws = EnumSet.noneOf(Flaw.class);
        note(flaws, meterOhm.compareTo(LEAST_METER_OHM) < 0, Flaw.METER_LOADS_THE_BUS);
        note(flaws, unsuited(suitedOhm), Flaw.RESISTOR_UNSUITED);
        note(flaws, withResistorVolts.compareTo(chassisVolts) >= 0, Flaw.VOLTAGE_DID_NOT_FALL);
        note(flaws, chassisVolts.compareTo(packVolts) > 0, Flaw.MORE_THAN_THE_PACK);
        return flaws;
    }

    private boolean unsuited(BigDecimal suitedOhm) {
        BigDecimal off = resistorOhm.subtract(suitedOhm).abs();
        return off.compareTo(suitedOhm.multiply(WINDOW)) > 0;
    }

    private static void note(Set<Flaw> flaws, boolean found, Flaw flaw) {
        if (found) {
            flaws.add(flaw);
        }
    }

    private static BigDecimal inverse(BigDecimal number) {
        return BigDecimal.ONE.divide(number, MathContext.DECIMAL128);
    }
}
