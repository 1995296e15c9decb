package boltlore.catalogue;

import java.math.BigDecimal;

/** Capacitance in µF of one device on the DC link. */
public record Capacitor(String name, String says, Condition when, BigDecimal microfarad) {}
