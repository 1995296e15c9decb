package boltlore.catalogue;

import java.math.BigDecimal;

/** A length in which bars are bought, and what one costs in the workshop's currency. */
public record BarLength(int lengthMm, BigDecimal cost) {}
