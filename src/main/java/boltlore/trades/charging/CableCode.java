package boltlore.trades.charging;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a loose cable may carry, told by a resistor between proximity contact and earth in its plug (IEC 61851-1, Table
 * B.2, as quoted in a component manual).
 */
public enum CableCode {
    A13(13, 13, 1500, 1000, 2200),
    A20(20, 20, 680, 330, 1000),
    A32(32, 32, 220, 150, 330),
    A63(63, 70, 100, 75, 150);

    private final int amps;
    private final int onePhaseAmps;
    private final int ohm;
    private final int fromOhm;
    private final int toOhm;

    CableCode(int amps, int onePhaseAmps, int ohm, int fromOhm, int toOhm) {
        this.amps = amps;
        this.onePhaseAmps = onePhaseAmps;
        this.ohm = ohm;
        this.fromOhm = fromOhm;
        this.toOhm = toOhm;
    }

    /** The code of a resistance; where two bands meet, the one with the lower current. Empty outside all bands. */
    public static Optional<CableCode> of(BigDecimal ohm) {
        return Stream.of(values()).filter(code -> code.covers(ohm)).findFirst();
    }

    private boolean covers(BigDecimal read) {
        return read.compareTo(BigDecimal.valueOf(fromOhm)) >= 0 && read.compareTo(BigDecimal.valueOf(toOhm)) <= 0;
    }

    /** The code with that current, as a cable is called by. */
    public static Optional<CableCode> rated(int amps) {
        return Stream.of(values()).filter(code -> code.amps == amps).findFirst();
    }

    /** In A; the largest code carries more on one phase than on three. */
    public int amps(int phases) {
        return phases == 1 ? onePhaseAmps : amps;
    }

    /** The nominal resistance in Ω. */
    public int ohm() {
        return ohm;
    }

    public int fromOhm() {
        return fromOhm;
    }

    public int toOhm() {
        return toOhm;
    }
}
