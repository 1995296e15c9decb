package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * The vehicle's 12 V battery with what hangs on it.
 *
 * @param highestVolts while it is charged, in V
 * @param lowestVolts at which its loads still work, in V
 * @param resistanceMilliohm of the battery, in mΩ: the least where there are several
 */
public record LowVoltage(BigDecimal highestVolts, BigDecimal lowestVolts, BigDecimal resistanceMilliohm) {}
