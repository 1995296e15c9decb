package boltlore.trades.charging;

import java.math.BigDecimal;

/** Where high voltage begins: voltage class B of ISO 6469-3 and UN Regulation 100 (from memory). */
public final class HighVoltage {

    private static final BigDecimal ABOVE_DIRECT = BigDecimal.valueOf(60);
    private static final BigDecimal ABOVE_ALTERNATING = BigDecimal.valueOf(30);
    private static final BigDecimal MOST_DIRECT = BigDecimal.valueOf(1_500);
    private static final BigDecimal MOST_ALTERNATING = BigDecimal.valueOf(1_000);

    private HighVoltage() {}

    /** Above 60 V, up to 1,500 V. */
    public static boolean direct(BigDecimal volts) {
        return volts.compareTo(ABOVE_DIRECT) > 0 && volts.compareTo(MOST_DIRECT) <= 0;
    }

    /** Above 30 V rms, up to 1,000 V. */
    public static boolean alternating(BigDecimal volts) {
        return volts.compareTo(ABOVE_ALTERNATING) > 0 && volts.compareTo(MOST_ALTERNATING) <= 0;
    }
}
