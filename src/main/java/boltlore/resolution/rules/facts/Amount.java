package boltlore.resolution.rules.facts;

import java.math.BigDecimal;

/** How many of a part, or how many lines at a position, are in the kit. */
public record Amount(String target, BigDecimal quantity) {}
