package boltlore.resolution.rules.facts;

import java.math.BigDecimal;

/** A part that mates with the port; asked is how many all ports that name it would take. */
public record PortMate(String part, String port, String mate, BigDecimal asked) {}
