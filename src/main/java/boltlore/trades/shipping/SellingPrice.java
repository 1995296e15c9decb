package boltlore.trades.shipping;

import boltlore.order.Extra;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.PricedExtra;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the customer pays, without sales tax: the price paid or payable that customs values are made of. It holds no cost.
 *
 * @param kit price of the kit alone
 * @param extras price of each extra of the order, equal ones added up
 * @param quoted whether it is the quotation's, and not the costed bill's
 */
public record SellingPrice(Currency currency, BigDecimal kit, Map<Extra, BigDecimal> extras, boolean quoted) {

    /** Of a workshop that writes no quotations. */
    public static SellingPrice of(PricedBill priced) {
        Map<Extra, BigDecimal> extras = new LinkedHashMap<>();
        for (PricedExtra each : priced.extras()) {
            extras.merge(each.extra(), each.price(), BigDecimal::add);
        }
        return new SellingPrice(priced.currency(), priced.kitPrice().price(), extras, false);
    }

    /**
     * After discount and before tax; the discount is shared by kit and extras so that nothing is lost by rounding.
     *
     * @param ordered the extras of the order, which the quotation has in the same order
     */
    public static SellingPrice of(Quotation quotation, List<Extra> ordered) {
        List<BigDecimal> listed = new ArrayList<>(List.of(quotation.kitPrice()));
        quotation.extras().forEach(each -> listed.add(each.price()));
        List<BigDecimal> net = shares(quotation.net(), listed, quotation.currency());
        Map<Extra, BigDecimal> extras = new LinkedHashMap<>();
        for (int i = 0; i < ordered.size(); i++) {
            extras.merge(ordered.get(i), net.get(i + 1), BigDecimal::add);
        }
        return new SellingPrice(quotation.currency(), net.get(0), extras, true);
    }

    /** Divides an amount in the currency by weights; the shares add up to it. */
    static List<BigDecimal> shares(BigDecimal amount, List<BigDecimal> weights, Currency currency) {
        int digits = new MinorUnit(currency).digits();
        return LargestRemainder.shares(amount.movePointRight(digits).toBigIntegerExact(), weights).stream()
                .map(share -> new BigDecimal(share, digits))
                .toList();
    }

    /** Kit and extras. */
    public BigDecimal total() {
        return extras.values().stream().reduce(kit, BigDecimal::add);
    }
}
