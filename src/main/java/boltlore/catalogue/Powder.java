package boltlore.catalogue;

import java.math.BigDecimal;

/** A powder with its price. */
public record Powder(String code, String says, BigDecimal pricePerKg) {}
