package boltlore.catalogue;

import java.math.BigDecimal;

/** The most that contacts for direct current bear, in V and A. */
public record DirectLimit(BigDecimal volts, BigDecimal amps) {}
