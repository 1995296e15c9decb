package boltlore.catalogue;

import java.math.BigDecimal;

/** Who coats the pieces that an oven does not take, and the price for 1 m² and coat. */
public record TooLarge(String coater, BigDecimal pricePerM2) {}
