package boltlore.asking;

import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;

/** A priced order in one line of figures. */
public final class KitFigures {

    private KitFigures() {}

    /** For whoever may see it: no cost. */
    public static String say(OrderPricing pricing) {
        CostedBill costed = pricing.costed();
        String mass = costed.totals().massKg().setScale(1, RoundingMode.HALF_UP).toPlainString() + " kg";
        return mass + ", " + price(pricing) + ", lead time " + pricing.leadDays() + " days";
    }

    /** For the workshop. */
    public static String withCost(OrderPricing pricing) {
        Currency home = pricing.costed().currency();
        String full = pricing.found()
                .map(found -> ", full cost " + money(home, found.cost().kit().total()) + extras(home, found.cost()))
                .orElse("");
        return say(pricing) + "; direct cost of the kit "
                + money(home, pricing.costed().totals().cost()) + full;
    }

    private static String extras(Currency home, FullCost cost) {
        BigDecimal extras = cost.total().subtract(cost.kit().total());
        return extras.signum() == 0 ? "" : ", and of its extras " + money(home, extras);
    }

    /** 'price EUR 40,620.00 before tax', after discount and with extras. */
    public static String price(OrderPricing pricing) {
        return pricing.quotation()
                .map(quotation -> "price " + beforeTax(quotation) + " before tax")
                .orElse("no price");
    }

    public static String beforeTax(Quotation quotation) {
        return money(quotation.currency(), quotation.net());
    }

    /** Why there is no price, where there is none. */
    public static Optional<String> noPrice(OrderPricing pricing) {
        String why = pricing.whyNoPrice();
        return why.isEmpty() ? Optional.empty() : Optional.of("Note: " + why);
    }

    public static String money(Currency currency, BigDecimal amount) {
        int digits = new MinorUnit(currency).digits();
        return currency.getCurrencyCode() + " " + String.format(Locale.ROOT, "%,." + digits + "f", amount);
    }
}
