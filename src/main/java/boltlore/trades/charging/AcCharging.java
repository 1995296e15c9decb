package boltlore.trades.charging;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Charging at one place on alternating current.
 *
 * @param cable code of a loose cable, or null where the cable belongs to the post
 * @param kilowatts that are drawn from the mains
 * @param hours from 20 to 80 %
 */
public record AcCharging(Mains mains, @Nullable CableCode cable, Chain chain, BigDecimal kilowatts, BigDecimal hours) {}
