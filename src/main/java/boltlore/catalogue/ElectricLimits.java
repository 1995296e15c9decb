package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What the workshop allows its wiring.
 *
 * @param dropPercent largest share of the voltage that a cable may lose, or null
 * @param unfusedMm longest conductor in mm between what feeds it and its fuse, or null
 * @param yJoule largest energy in J that the Y capacitors hold at the pack's highest voltage, or null
 * @param source where the figures are from
 */
public record ElectricLimits(
        @Nullable BigDecimal dropPercent,
        @Nullable Integer unfusedMm,
        @Nullable BigDecimal yJoule,
        String source) {}
