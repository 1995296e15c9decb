package boltlore.trades.charging;

import boltlore.catalogue.PublicLead;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Charging at one place on alternating current.
 *
 * @param cable code of a loose cable, or null where the cable belongs to the post or is the kit's own
 * @param lead the kit's own cable, or null
 * @param kilowatts that are drawn from the mains
 * @param hours from 20 to 80 %
 */
public record AcCharging(
        Mains mains,
        @Nullable CableCode cable,
        @Nullable PublicLead lead,
        Chain chain,
        BigDecimal kilowatts,
        BigDecimal hours) {}
