package boltlore.order;

import boltlore.catalogue.Station;
import boltlore.measure.PartNumber;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Something on the order outside the universal kit: a part, or a one-off that is described.
 *
 * @param finish that its coated parts take, or empty where each takes its own or the order's
 * @param cost for one, or null: the part's own, or nothing where the customer supplies it
 * @param price for one, or null: cost with mark-up
 * @param massKg of one, for a one-off; null where it is not known, and for a part, which has its own
 * @param at where it sits in the vehicle, or null where that is not known
 * @param goods what it is in carriage, for a one-off; null where nobody has said, and for a part, which has its own
 */
public record Extra(
        @Nullable PartNumber part,
        String says,
        BigDecimal quantity,
        String unit,
        @Nullable BigDecimal cost,
        @Nullable BigDecimal price,
        boolean suppliedByCustomer,
        String reason,
        String finish,
        @Nullable BigDecimal massKg,
        @Nullable Station at,
        @Nullable ExtraGoods goods) {

    public Extra(
            @Nullable PartNumber part,
            String says,
            BigDecimal quantity,
            String unit,
            @Nullable BigDecimal cost,
            @Nullable BigDecimal price,
            boolean suppliedByCustomer,
            String reason) {
        this(part, says, quantity, unit, cost, price, suppliedByCustomer, reason, "", null, null, null);
    }
}
