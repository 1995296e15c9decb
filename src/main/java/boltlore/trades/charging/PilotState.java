package boltlore.trades.charging;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * State of the control pilot by its positive peak (IEC 61851-1, 1 kHz at ±12 V, as quoted in a component manual; the
 * words for the states from memory).
 */
public enum PilotState {
    A(12, null, "no vehicle"),
    B(9, 2740, "vehicle connected, not ready"),
    C(6, 1300, "charging"),
    D(3, 270, "charging, ventilation required"),
    E(0, null, "no power or pilot short"),
    F(-12, null, "station not available");

    /** How far in V a peak may lie from its state's: from memory. */
    private static final BigDecimal TOLERANCE = BigDecimal.ONE;

    private final BigDecimal volts;
    private final @Nullable Integer ohm;
    private final String says;

    PilotState(int volts, @Nullable Integer ohm, String says) {
        this.volts = BigDecimal.valueOf(volts);
        this.ohm = ohm;
        this.says = says;
    }

    /** Of a peak in V, within 1 V; empty between states. */
    public static Optional<PilotState> of(BigDecimal volts) {
        return Stream.of(values()).filter(state -> state.isNear(volts)).findFirst();
    }

    private boolean isNear(BigDecimal read) {
        return read.subtract(volts).abs().compareTo(TOLERANCE) <= 0;
    }

    public BigDecimal volts() {
        return volts;
    }

    /**
     * The resistor in Ω (±3 %) that the vehicle has between pilot and earth in state B, and that it puts beside that one in C
     * or D; that of B from memory. Null where the vehicle does nothing.
     */
    public @Nullable Integer ohm() {
        return ohm;
    }

    public String says() {
        return says;
    }
}
