package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * What an on-board charger makes of the mains.
 *
 * @param efficiencyPercent of the mains' energy that reaches the pack, above 0
 * @param lowestVolts lowest voltage in V that it can feed
 * @param highestVolts highest voltage in V that it can feed
 */
public record OnBoardCharger(
        Condition when, BigDecimal efficiencyPercent, BigDecimal lowestVolts, BigDecimal highestVolts) {}
