package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Material that parts are cut from: density in kg/m³, thickness in mm for flat stock, stock length in mm for bars. */
public record Material(
        String name,
        String says,
        String form,
        BigDecimal densityKgM3,
        @Nullable BigDecimal thicknessMm,
        @Nullable Integer barMm,
        @Nullable BigDecimal pricePerKg) {}
