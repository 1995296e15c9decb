package boltlore.trades.charging;

import boltlore.catalogue.Buses;
import java.math.BigDecimal;

/** The least isolation between high-voltage buses and the chassis (UN Regulation 100, 5.1.3.1 and 5.1.3.2). */
public final class Isolation {

    private static final BigDecimal DC_OHM_PER_VOLT = BigDecimal.valueOf(100);
    private static final BigDecimal AC_OHM_PER_VOLT = BigDecimal.valueOf(500);

    private Isolation() {}

    /** 100 or 500 Ω for each volt: the lower one only where no bare AC part can be reached or none is joined. */
    public static BigDecimal ohmPerVolt(Buses buses) {
        return switch (buses) {
            case SEPARATE_DC, JOINED_AC_PROTECTED -> DC_OHM_PER_VOLT;
            case SEPARATE_AC, JOINED -> AC_OHM_PER_VOLT;
        };
    }

    /**
     * The least resistance in Ω.
     *
     * @param volts working voltage of the bus in V, above 0: the highest that the pack reaches is on the safe side
     * @throws IllegalArgumentException where the voltage is not above 0
     */
    public static BigDecimal limitOhm(Buses buses, BigDecimal volts) {
        return ohmPerVolt(buses).multiply(Positive.number("volts", volts));
    }
}
