package boltlore.trades.shipping;

import java.math.BigDecimal;

/**
 * What the air rules ask of lithium-ion batteries (ICAO Technical Instructions, packing instructions 965 and 966, special
 * provision A99; from memory).
 */
public final class AirRules {

    /** Largest state of charge of UN 3480; of UN 3481 packed with equipment, and of UN 3556 above 100 Wh, from 2026 on. */
    public static final BigDecimal MOST_CHARGE_PERCENT = BigDecimal.valueOf(30);

    /** Largest net mass of UN 3480 in a package on cargo aircraft; above it takes approval of the States concerned. */
    public static final BigDecimal MOST_NET_KG = BigDecimal.valueOf(35);

    /** Indicated charge up to which UN 3556 may fly instead. */
    public static final BigDecimal MOST_INDICATED_PERCENT = BigDecimal.valueOf(25);

    private AirRules() {}

    public static boolean chargeAllowed(BigDecimal chargePercent) {
        return chargePercent.compareTo(MOST_CHARGE_PERCENT) <= 0;
    }

    public static boolean needsApproval(BigDecimal netKg) {
        return netKg.compareTo(MOST_NET_KG) > 0;
    }

    /** Batteries alone are forbidden on aircraft that carry passengers. */
    public static boolean cargoAircraftOnly(UnNumber un) {
        return un == UnNumber.LITHIUM_ION;
    }
}
