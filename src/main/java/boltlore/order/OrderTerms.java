package boltlore.order;

import java.math.BigDecimal;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * What is agreed on the price of one order.
 *
 * @param discountPercent in place of the partner's, or null
 * @param currency that the order is quoted in, in place of the partner's, or null
 */
public record OrderTerms(
        @Nullable BigDecimal discountPercent, @Nullable Currency currency) {

    /** Of an order of which nothing is agreed. */
    public static final OrderTerms NONE = new OrderTerms(null, null);
}
