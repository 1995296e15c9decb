package boltlore.trades.charging;

import boltlore.catalogue.Pack;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How long charging takes. Full power is taken from beginning to end; that a pack takes less when nearly full, cold or hot
 * is not counted, so the time is a least one.
 */
public final class ChargingTime {

    /** From 20 to 80 % of the usable energy. */
    private static final BigDecimal SHARE = new BigDecimal("0.6");

    private static final int PERCENT = 2;

    private ChargingTime() {}

    /**
     * Energy × 0.6 / (power × efficiency), in h: energy over power, any textbook.
     *
     * @param kilowatts drawn, above 0
     * @param efficiencyPercent of it that reaches the pack, above 0
     * @throws IllegalArgumentException where one of them is not above 0
     */
    public static BigDecimal hours(Pack pack, BigDecimal kilowatts, BigDecimal efficiencyPercent) {
        BigDecimal reaching = Positive.number("kilowatts", kilowatts)
                .multiply(Positive.number("efficiencyPercent", efficiencyPercent))
                .movePointLeft(PERCENT);
        return pack.usableKwh().multiply(SHARE).divide(reaching, MathContext.DECIMAL128);
    }
}
