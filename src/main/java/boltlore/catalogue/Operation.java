package boltlore.catalogue;

import java.math.BigDecimal;

/** One operation in making a part: minutes to set up once and to run for each. */
public record Operation(String operation, BigDecimal setUpMin, BigDecimal runMin) {}
