package boltlore.trades.shipping;

import boltlore.catalogue.RatedMotor;
import boltlore.catalogue.RatedMotor.Current;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * Headings of the Harmonised System (HS 2022) that parts of a kit usually come under, from memory. A customs broker rules on them, and on what counts as a set.
 */
public enum Tariff {
    AC_MOTOR("8501.52", "AC motors, multi-phase, above 750 W up to 75 kW"),
    LARGE_AC_MOTOR("8501.53", "AC motors, multi-phase, above 75 kW"),
    DC_MOTOR("8501.32", "DC motors, above 750 W up to 75 kW"),
    LARGE_DC_MOTOR("8501.33", "DC motors, above 75 kW"),
    LITHIUM_ION("8507.60", "Lithium-ion accumulators"),
    LEAD_ACID("8507.10", "Lead-acid accumulators"),
    CONVERTER("8504.40", "Static converters: chargers, inverters"),
    WIRING_SET("8544.30", "Wiring sets for vehicles"),
    VEHICLE_PART("8708.99", "Parts of motor vehicles"),
    CONNECTOR("8536.69", "Plugs and sockets, up to 1000 V"),
    AIR_CONDITIONING("8415.20", "Air conditioning for motor vehicles"),
    COMPRESSOR("8414.30", "Compressors for refrigerating equipment"),
    FASTENER("7318", "Screws, bolts, nuts and washers of steel"),
    CONTROLLER("9032.89", "Regulating and controlling instruments");

    /** Up to this power a DC motor has the code 8501.32, as its heading says. */
    private static final BigDecimal LARGE_KW = BigDecimal.valueOf(75);

    private final String code;
    private final String says;

    Tariff(String code, String says) {
        this.code = code;
        this.says = says;
    }

    /** With its point. */
    public String code() {
        return code;
    }

    public String says() {
        return says;
    }

    /** The heading of a motor of more than 750 W: the power decides, 75 kW itself still with the smaller. */
    public static Tariff of(RatedMotor motor) {
        boolean large = motor.kw().compareTo(LARGE_KW) > 0;
        if (motor.current() == Current.AC) {
            return large ? LARGE_AC_MOTOR : AC_MOTOR;
        }
        return large ? LARGE_DC_MOTOR : DC_MOTOR;
    }

    /** Whether a code, with or without points and further digits, comes under it. */
    public boolean covers(String hs) {
        return digits(hs).startsWith(digits(code));
    }

    /** The heading that a code comes under; empty for one that is not listed here. */
    public static Optional<Tariff> of(String hs) {
        return Arrays.stream(values()).filter(each -> each.covers(hs)).findFirst();
    }

    static String digits(String hs) {
        return hs.replace(".", "");
    }
}
