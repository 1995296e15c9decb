package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Pieces cut for one part: so many of that length from that material, with the two end angles in degrees.
 *
 * @param lengthMm where the length follows a measured dimension, that of the usual one, or of one order's once it is known
 * @param measured how the length follows a dimension that is measured on each vehicle, or null
 */
public record Cut(
        String material,
        BigDecimal lengthMm,
        int count,
        List<BigDecimal> endAngles,
        @Nullable Measured measured) {

    /** Of one length on every vehicle. */
    public Cut(String material, BigDecimal lengthMm, int count, List<BigDecimal> endAngles) {
        this(material, lengthMm, count, endAngles, null);
    }

    /** Length = times × measured dimension + plus, which may be below 0. */
    public record Measured(String measure, BigDecimal times, BigDecimal plusMm) {

        public BigDecimal lengthMm(BigDecimal measuredMm) {
            return times.multiply(measuredMm).add(plusMm);
        }
    }
}
