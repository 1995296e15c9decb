package boltlore.order;

import boltlore.catalogue.ShippedBattery;
import boltlore.catalogue.Transport;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * What an order says of a one-off as goods in carriage.
 *
 * @param transport marking of dangerous goods; null where somebody has looked and it is none
 * @param netKg mass in kg of the dangerous goods in one of it, their packaging and all else not counted; null where it is
 *     the mass of the one-off itself
 * @param battery what is known of it as a battery; null where it is none
 */
public record ExtraGoods(
        @Nullable Transport transport,
        @Nullable BigDecimal netKg,
        @Nullable ShippedBattery battery) {

    /** Looked at, and no dangerous goods. */
    public static final ExtraGoods HARMLESS = new ExtraGoods(null, null, null);
}
