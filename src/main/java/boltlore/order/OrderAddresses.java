package boltlore.order;

import boltlore.measure.Party;
import org.jspecify.annotations.Nullable;

/**
 * To whom an order's crates and its invoice go.
 *
 * @param consignee or null: the partner's, or else whoever pays
 * @param invoice who pays, or null: the partner, or else the consignee
 */
public record OrderAddresses(
        @Nullable Party consignee, @Nullable Party invoice) {

    /** Of an order of which nobody has said. */
    public static final OrderAddresses NONE = new OrderAddresses(null, null);
}
