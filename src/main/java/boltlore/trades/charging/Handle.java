package boltlore.trades.charging;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the proximity contact tells of a Type 1 handle (help pages of charging stations on the SAE J1772 handle). It is a
 * latch signal and no current code, so looms for Type 1 and Type 2 cannot be swapped.
 */
public enum Handle {
    LATCHED(150),
    BUTTON_PRESSED(480);

    /** Of the nominal value; common practice, no source. */
    private static final BigDecimal TOLERANCE = new BigDecimal("0.1");

    private final BigDecimal ohm;

    Handle(int ohm) {
        this.ohm = BigDecimal.valueOf(ohm);
    }

    public BigDecimal ohm() {
        return ohm;
    }

    /** Empty where the resistance is neither. */
    public static Optional<Handle> of(BigDecimal ohm) {
        return Stream.of(values()).filter(handle -> handle.isNear(ohm)).findFirst();
    }

    private boolean isNear(BigDecimal read) {
        return read.subtract(ohm).abs().compareTo(ohm.multiply(TOLERANCE)) <= 0;
    }
}
