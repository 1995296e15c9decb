package boltlore.trades.cutting;

import java.math.BigDecimal;

/**
 * A rest of a bar that was kept.
 *
 * @param name as it is written on it
 * @param heat number of the heat or lot that it comes from, or empty where that is not known
 */
public record Remnant(String name, String material, BigDecimal lengthMm, String heat) {}
