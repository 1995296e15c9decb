package boltlore.resolution.rules.facts;

import java.math.BigDecimal;

/** Concluded: the port has no mate in the kit and is to be closed by its blank. */
public record OpenPort(String part, String port, BigDecimal count, String blank) {}
