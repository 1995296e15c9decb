package boltlore.catalogue;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** How a part is bought; pack and minimum in the part's own unit, at least one step where null. */
public record Buying(
        String supplier,
        String orderCode,
        @Nullable BigDecimal packOf,
        @Nullable BigDecimal minimumOrder) {}
