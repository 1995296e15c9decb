package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A loose cable for public charging points.
 *
 * @param phases 1 or 3
 * @param amps in each phase in A, as its plug codes it: no more flows, for a charging point keeps to it (IEC 61851-1:2017,
 *     annex B)
 * @param wireAmps what its wires bear in A, or null where nobody says more than the code
 */
public record PublicLead(
        PartNumber part,
        int phases,
        BigDecimal amps,
        @Nullable BigDecimal wireAmps) {

    /** A cable whose wires are taken to bear what its plug codes. */
    public PublicLead(PartNumber part, int phases, BigDecimal amps) {
        this(part, phases, amps, null);
    }
}
