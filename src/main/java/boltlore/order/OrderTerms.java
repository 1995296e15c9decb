package boltlore.order;

import boltlore.measure.DeliveryTerm;
import java.math.BigDecimal;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * What is agreed on the price of one order.
 *
 * @param discountPercent in place of the partner's, or null
 * @param currency that the order is quoted in, in place of the partner's, or null
 * @param delivery in place of the partner's and the workshop's, or null
 * @param payment when it is paid, in the order's language, in place of the workshop's words; or empty
 */
public record OrderTerms(
        @Nullable BigDecimal discountPercent,
        @Nullable Currency currency,
        @Nullable DeliveryTerm delivery,
        String payment) {

    /** Of an order of which nothing is agreed. */
    public static final OrderTerms NONE = new OrderTerms(null, null);

    /** Of which only the price is agreed. */
    public OrderTerms(@Nullable BigDecimal discountPercent, @Nullable Currency currency) {
        this(discountPercent, currency, null, "");
    }
}
