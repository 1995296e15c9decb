package boltlore.trades.costing.quote;

import boltlore.order.Order;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * What is wanted of a quotation.
 *
 * @param on the day of the quotation
 * @param discountPercent in place of the partner's, or null
 * @param currency in place of the partner's and the workshop's, or null
 * @param version of the order's quotation, from 1
 */
public record QuoteRequest(
        LocalDate on,
        @Nullable BigDecimal discountPercent,
        @Nullable Currency currency,
        int version) {

    /** Of the first version. */
    public QuoteRequest(LocalDate on, @Nullable BigDecimal discountPercent, @Nullable Currency currency) {
        this(on, discountPercent, currency, 1);
    }

    /** As the order and its partner have agreed, on the date of the order, or else today. */
    public static QuoteRequest usual(Order order, LocalDate today) {
        return new QuoteRequest(order.placed() == null ? today : order.placed(), null, null);
    }
}
