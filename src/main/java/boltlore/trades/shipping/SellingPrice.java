package boltlore.trades.shipping;

import boltlore.order.Extra;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the customer pays, without sales tax: the price paid or payable that customs values are made of. It holds no cost.
 *
 * @param kit price of the kit alone
 * @param extras price of each extra of the order, equal ones added up
 * @param on day of the quotation, or null
 * @param terms of payment and delivery
 */
public record SellingPrice(
        Currency currency,
        BigDecimal kit,
        Map<Extra, BigDecimal> extras,
        @Nullable LocalDate on,
        Quotation.Terms terms) {

    /** Of the order's quotation; empty where it has no price. */
    public static Optional<SellingPrice> of(OrderPricing pricing) {
        List<Extra> ordered = pricing.costed().bill().order().extra();
        return pricing.quotation().map(quotation -> of(quotation, ordered));
    }

    /**
     * After discount and before tax; the discount is shared by kit and extras so that nothing is lost by rounding.
     *
     * @param ordered the extras of the order, which the quotation has in the same order
     */
    static SellingPrice of(Quotation quotation, List<Extra> ordered) {
        List<BigDecimal> listed = new ArrayList<>(List.of(quotation.kitPrice()));
        quotation.extras().forEach(each -> listed.add(each.price()));
        List<BigDecimal> net = LargestRemainder.shares(quotation.net(), listed, quotation.currency());
        Map<Extra, BigDecimal> extras = new LinkedHashMap<>();
        for (int i = 0; i < ordered.size(); i++) {
            extras.merge(ordered.get(i), net.get(i + 1), BigDecimal::add);
        }
        return new SellingPrice(quotation.currency(), net.get(0), extras, quotation.on(), quotation.terms());
    }

    /** Kit and extras. */
    public BigDecimal total() {
        return extras.values().stream().reduce(kit, BigDecimal::add);
    }
}
