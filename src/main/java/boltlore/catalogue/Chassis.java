package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A donor vehicle of one body era on its axles: as weighed before work begins, ready to drive with nobody in it, and
 * what it may weigh. Lengths in mm, masses in kg.
 *
 * @param frontTrackMm distance between the front wheels' middles; null where nobody measured
 * @param centreHeightMm height of the centre of gravity above the road; null where nobody measured
 * @param grossKg most that the whole vehicle may weigh
 */
public record Chassis(
        int wheelbaseMm,
        @Nullable Integer frontTrackMm,
        @Nullable Integer rearTrackMm,
        @Nullable Integer centreHeightMm,
        BigDecimal frontKg,
        BigDecimal rearKg,
        BigDecimal frontLimitKg,
        BigDecimal rearLimitKg,
        BigDecimal grossKg) {

    public BigDecimal massKg() {
        return frontKg.add(rearKg);
    }
}
