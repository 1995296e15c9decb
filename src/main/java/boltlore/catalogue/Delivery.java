package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What it costs to bring a supplier's goods here.
 *
 * @param perKg freight for a kilogram, or null where it is a share of the price
 * @param percent freight in per cent of the price, or null where it goes by mass
 * @param clearance customs clearance of one consignment
 * @param kits that one consignment usually serves
 */
public record Delivery(
        String supplier,
        @Nullable BigDecimal perKg,
        @Nullable BigDecimal percent,
        BigDecimal clearance,
        int kits) {}
