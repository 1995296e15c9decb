package boltlore.trades.charging;

import java.math.BigDecimal;

/**
 * Charging on direct current at a post that gives as much as the vehicle takes.
 *
 * @param kilowatts current times the pack's nominal voltage
 * @param hours from 20 to 80 %
 * @param limits what limits the current, in a sentence
 */
public record DcCharging(BigDecimal amps, BigDecimal kilowatts, BigDecimal hours, String limits) {}
