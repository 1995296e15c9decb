package boltlore.catalogue;

import java.math.BigDecimal;

/** Holes of one diameter in a part. */
public record Hole(BigDecimal diameterMm, int count) {}
