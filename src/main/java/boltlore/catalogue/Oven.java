package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * A curing oven of the workshop.
 *
 * @param fillPercent share of the inner volume that hung parts may take up with their air gaps
 */
public record Oven(
        String name,
        String says,
        EnvelopeMm inside,
        int hooks,
        BigDecimal loadKg,
        BigDecimal loadAreaM2,
        BigDecimal fillPercent) {}
