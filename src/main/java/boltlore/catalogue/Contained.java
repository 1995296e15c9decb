package boltlore.catalogue;

import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A child of an assembly with its fixed quantity for one of the assembly.
 *
 * @param perMetre how many come with a metre of the assembly's length, where the quantity follows from that; else null
 */
public record Contained(
        PartNumber part, BigDecimal quantity, @Nullable BigDecimal perMetre) {

    /** A child whose quantity was written down. */
    public Contained(PartNumber part, BigDecimal quantity) {
        this(part, quantity, null);
    }
}
