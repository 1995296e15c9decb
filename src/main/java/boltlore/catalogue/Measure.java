package boltlore.catalogue;

import boltlore.measure.Wording;
import java.math.BigDecimal;

/**
 * A dimension that differs from vehicle to vehicle and is taken on each.
 *
 * @param asks where and how it is taken
 * @param fromMm least that can be right
 * @param toMm most that can be right
 * @param usualMm what drawings and costs are made for
 */
public record Measure(String name, Wording asks, BigDecimal fromMm, BigDecimal toMm, BigDecimal usualMm) {}
