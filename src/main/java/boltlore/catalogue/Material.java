package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Material that parts are cut from.
 *
 * @param metal which metal it is, or null where that is not known; a finish says which ones it is for
 * @param thicknessMm of flat stock, or of a wall
 * @param bars the bars it is bought in, or null where nothing is sawn from it or that is not known
 * @param bending how it bends, or null where it is not bent or that is not known
 */
public record Material(
        String name,
        String says,
        String form,
        @Nullable String metal,
        BigDecimal densityKgM3,
        @Nullable BigDecimal thicknessMm,
        @Nullable BigDecimal pricePerKg,
        @Nullable BarStock bars,
        @Nullable Bending bending) {}
