package boltlore.trades.costing.quote;

import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * An extra as the customer is quoted it. Holds nothing of what it costs.
 *
 * @param price of the whole quantity, before discount
 */
public record QuotedExtra(
        @Nullable PartNumber part,
        String says,
        BigDecimal quantity,
        String unit,
        boolean suppliedByCustomer,
        BigDecimal price) {

    static QuotedExtra of(Extra extra, BigDecimal price) {
        return new QuotedExtra(
                extra.part(), extra.says(), extra.quantity(), extra.unit(), extra.suppliedByCustomer(), price);
    }
}
