package boltlore.catalogue;

import java.math.BigDecimal;

/**
 * What guards people at the outlet that feeds a load.
 *
 * @param residual type of the residual-current protection, in words
 * @param tripMilliamps residual current in mA at which it trips
 * @param withinMilliseconds longest time in ms that it takes at that current
 * @param continuousShare share of the current that may flow for hours, from above 0 to 1
 */
public record Outlet(
        Condition when, String residual, int tripMilliamps, int withinMilliseconds, BigDecimal continuousShare) {}
