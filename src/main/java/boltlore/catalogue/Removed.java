package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * Something that comes off the donor vehicle before the kit goes in.
 *
 * @param when over options: in which orders it comes off
 */
public record Removed(String name, String says, BigDecimal massKg, Station at, Condition when) {}
