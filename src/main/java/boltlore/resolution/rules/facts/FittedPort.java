package boltlore.resolution.rules.facts;

import java.math.BigDecimal;

/** A high-voltage connector of a part in the kit, so many of it; blank is empty where none is named. */
public record FittedPort(String part, String port, BigDecimal count, String blank) {}
