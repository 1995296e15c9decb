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

    /** A meter's own error beside its last digit: common practice, no source. */
    public static final BigDecimal METER_ERROR = new BigDecimal("1.02");

    /** How far both poles together may be off what was worked out: common practice, no source. */
    private static final BigDecimal SUM_ERROR = new BigDecimal("0.1");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

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
        MORE_THAN_THE_PACK,
        /** The other pole shows more, so the resistor was at the wrong one. */
        OTHER_POLE_GREATER,
        /** Both poles together do not show what the result and the meter's own resistance let them show. */
        POLES_DO_NOT_ADD_UP,
        /** For the result the pole would show more: a clip was off the chassis or the pole. */
        CHASSIS_VOLTS_TOO_SMALL
    }

    /** Ri = Ro × Vb × (1/V1' − 1/V1), in Ω; nothing to go by where {@link #flaws} finds one. */
    public BigDecimal isolationOhm() {
        BigDecimal share = inverse(withResistorVolts).subtract(inverse(chassisVolts));
        return resistorOhm.multiply(packVolts).multiply(share);
    }

    /**
     * What the pole shows against the chassis at least, in V: Vb · (Ri ∥ Rm) / (Ri + Ri ∥ Rm) = Vb · Rm / (2 Rm + Ri), where
     * the meter's own resistance lies beside a pole that insulates no worse than the other one. It follows from the circuit.
     */
    public BigDecimal leastChassisVolts(BigDecimal meterOhm) {
        return leastChassisVolts(meterOhm, isolationOhm());
    }

    private BigDecimal leastChassisVolts(BigDecimal meterOhm, BigDecimal ohm) {
        return packVolts.multiply(meterOhm).divide(TWO.multiply(meterOhm).add(ohm), MathContext.DECIMAL128);
    }

    /**
     * What both poles show together, in V: Vb / (1 + R / Rm), where R is the isolation of both poles side by side; that of
     * the better one follows from the ratio of the two voltages.
     *
     * @param otherVolts between the other pole and the chassis, from 0
     */
    public BigDecimal bothPolesVolts(BigDecimal otherVolts, BigDecimal meterOhm) {
        return bothPolesVolts(otherVolts, meterOhm, isolationOhm());
    }

    private BigDecimal bothPolesVolts(BigDecimal otherVolts, BigDecimal meterOhm, BigDecimal ohm) {
        BigDecimal side = ohm.multiply(chassisVolts).divide(chassisVolts.add(otherVolts), MathContext.DECIMAL128);
        return packVolts.multiply(meterOhm).divide(meterOhm.add(side), MathContext.DECIMAL128);
    }

    /**
     * Whether the voltages can be at all for the isolation that they give, with the meter's last digit and error on the
     * tester's side; to be asked where {@link #flaws} finds nothing.
     *
     * @param otherVolts between the other pole and the chassis, from 0
     * @param stepVolts last digit of the meter, above 0
     */
    public Set<Flaw> implausible(BigDecimal otherVolts, BigDecimal meterOhm, BigDecimal stepVolts) {
        Set<Flaw> flaws = EnumSet.noneOf(Flaw.class);
        BigDecimal most = ohm(withResistorVolts.subtract(stepVolts).max(stepVolts.divide(TWO)), stepVolts);
        BigDecimal least =
                ohm(withResistorVolts.add(stepVolts), stepVolts.negate()).max(BigDecimal.ZERO);
        BigDecimal sum = chassisVolts.add(otherVolts);
        BigDecimal steps = stepVolts.multiply(TWO);
        BigDecimal shown = chassisVolts.multiply(METER_ERROR).add(stepVolts);
        note(flaws, otherVolts.compareTo(chassisVolts.add(stepVolts)) > 0, Flaw.OTHER_POLE_GREATER);
        note(flaws, shown.compareTo(leastChassisVolts(meterOhm, most)) < 0, Flaw.CHASSIS_VOLTS_TOO_SMALL);
        boolean under = sum.add(steps)
                        .compareTo(
                                bothPolesVolts(otherVolts, meterOhm, most).multiply(BigDecimal.ONE.subtract(SUM_ERROR)))
                < 0;
        boolean over = sum.subtract(steps)
                        .compareTo(bothPolesVolts(otherVolts, meterOhm, least).multiply(BigDecimal.ONE.add(SUM_ERROR)))
                > 0;
        note(flaws, under || over, Flaw.POLES_DO_NOT_ADD_UP);
        return flaws;
    }

    private BigDecimal ohm(BigDecimal withVolts, BigDecimal aboveVolts) {
        BigDecimal share =
                inverse(withVolts).subtract(inverse(chassisVolts.add(aboveVolts).max(withVolts)));
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
