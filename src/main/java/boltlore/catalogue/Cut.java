package boltlore.catalogue;

import java.math.BigDecimal;
import java.util.List;

/** Pieces cut for one part: so many of that length from that material, with the two end angles in degrees. */
public record Cut(String material, BigDecimal lengthMm, int count, List<BigDecimal> endAngles) {}
