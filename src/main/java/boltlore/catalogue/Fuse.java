package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;

/**
 * A fuse or breaker of the high-voltage system.
 *
 * @param part that it is or sits in
 * @param amps rated current in A
 * @param volts rated voltage in V
 * @param breakingKiloamps the largest current in kA that it breaks at that voltage
 * @param letThroughA2s what it lets through while it breaks a short circuit, in A² s
 */
public record Fuse(
        String name,
        String says,
        PartNumber part,
        BigDecimal amps,
        BigDecimal volts,
        BigDecimal breakingKiloamps,
        BigDecimal letThroughA2s,
        Guards guards) {

    /** What a fuse keeps from its cable. */
    public enum Guards {
        /** Overload and short circuit. */
        OVERLOAD("overload"),
        /** Short circuit only: something else limits the current for hours. */
        SHORT_CIRCUIT("short-circuit");

        private final String written;

        Guards(String written) {
            this.written = written;
        }

        public String written() {
            return written;
        }
    }
}
