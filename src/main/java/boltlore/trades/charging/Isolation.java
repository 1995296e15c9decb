package boltlore.trades.charging;

import boltlore.catalogue.Buses;
import java.math.BigDecimal;

/** The least isolation between high-voltage buses and the chassis (UN Regulation 100, 5.1.3.1 and 5.1.3.2). */
public final class Isolation {

    private static final BigDecimal DC_OHM_PER_VOLT = BigDecimal.valueOf(100);
    private static final BigDecimal AC_OHM_PER_VOLT = BigDecimal.valueOf(500);

    /**
     * What the inlet and whatever is joined to it while charging keeps against the chassis, with the coupler disconnected, in
     * Ω (UN Regulation 100, 5.1.3.4, 01 and 02 series of amendments; read in a national text of it of 2019).
     */
    public static final BigDecimal INLET_OHM = BigDecimal.valueOf(1_000_000);

    private Isolation() {}

    /** 100 or 500 Ω for each volt: the lower one only where no bare AC part can be reached or none is joined. */
    public static BigDecimal ohmPerVolt(Buses buses) {
        return switch (buses) {
            case SEPARATE_DC, JOINED_AC_PROTECTED -> DC_OHM_PER_VOLT;
            case SEPARATE_AC, JOINED -> AC_OHM_PER_VOLT;
        };
    }

    /**
     * The least resistance of an inlet for alternating current in Ω: the 03 series of amendments asks for that of an AC bus,
     * those before it for {@link #INLET_OHM}; the stricter one keeps both.
     */
    public static BigDecimal inletOhm(BigDecimal volts) {
        return limitOhm(Buses.SEPARATE_AC, volts).max(INLET_OHM);
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
