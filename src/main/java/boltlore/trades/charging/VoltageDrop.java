package boltlore.trades.charging;

import boltlore.catalogue.PowerCable;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * What a cable loses on its way out and back.
 *
 * @param lengthMm of the cable, one way
 * @param volts lost, in V
 * @param percent of the voltage that feeds it
 */
public record VoltageDrop(int lengthMm, BigDecimal volts, BigDecimal percent) {

    /** Of annealed copper for each K, from 20 °C (IEC 60028). */
    private static final BigDecimal PER_KELVIN = new BigDecimal("0.00393");

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal ROOT_OF_THREE = BigDecimal.valueOf(3).sqrt(MathContext.DECIMAL128);
    private static final int COLD = 20;
    private static final int THREE = 3;
    private static final int MM_IN_KM = 6;

    /**
     * ΔU = 2 R L I of a pair, √3 R L I of three phases with equal load; R at the conductor's hottest, from its resistance at
     * 20 °C (IEC 60228) with 0.393 % for each K.
     *
     * @param amps the current in A
     * @param phases 1 of direct current and of one phase, or 3
     * @param feedVolts the lowest voltage that feeds it, between the conductors, above 0
     */
    static VoltageDrop of(PowerCable cable, int lengthMm, BigDecimal amps, int phases, BigDecimal feedVolts) {
        Positive.number("feedVolts", feedVolts);
        BigDecimal wayBack = phases == THREE ? ROOT_OF_THREE : TWO;
        BigDecimal volts = hotOhmPerKm(cable)
                .multiply(BigDecimal.valueOf(lengthMm).movePointLeft(MM_IN_KM))
                .multiply(amps)
                .multiply(wayBack, MathContext.DECIMAL128);
        return new VoltageDrop(lengthMm, volts, volts.movePointRight(2).divide(feedVolts, MathContext.DECIMAL128));
    }

    static BigDecimal hotOhmPerKm(PowerCable cable) {
        BigDecimal warmer = BigDecimal.valueOf(cable.hottestC() - (long) COLD).multiply(PER_KELVIN);
        return cable.ohmPerKm().multiply(BigDecimal.ONE.add(warmer));
    }
}
