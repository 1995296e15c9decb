package boltlore.asking;

import boltlore.choosing.BestKit;
import boltlore.logic.Count;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;

/** Amounts and counts in words. */
public final class FigureWords {

    private FigureWords() {}

    /** 'Price EUR 24,460.00 to 40,820.00 before tax', or the one price where the ends do not differ. */
    public static String range(OrderPricing cheapest, OrderPricing dearest) {
        Optional<Quotation> low = cheapest.quotation();
        Optional<Quotation> high = dearest.quotation();
        if (low.isEmpty() || high.isEmpty()) {
            return KitFigures.noPrice(cheapest).orElse("No price");
        }
        String least = KitFigures.beforeTax(low.get());
        boolean same = low.get().net().compareTo(high.get().net()) == 0;
        String to = same
                ? ""
                : " to " + String.format(Locale.ROOT, "%,.2f", high.get().net());
        return "Price " + least + to + " before tax";
    }

    /** 'EUR 120.00 more', 'EUR 3.50 less', 'same price'. */
    public static String difference(BestKit kit, BigDecimal more) {
        return difference(kit.pricing().quotation().orElseThrow().currency(), more);
    }

    public static String difference(Currency currency, BigDecimal more) {
        if (more.signum() == 0) {
            return "same price";
        }
        return KitFigures.money(currency, more.abs()) + (more.signum() > 0 ? " more" : " less");
    }

    /** 'EUR 120.00 more', 'EUR 3.50 less', 'the same'. */
    public static String costs(Currency currency, BigDecimal more) {
        return more.signum() == 0 ? "the same" : difference(currency, more);
    }

    /** '1.2 kg more', '3.0 kg less', 'same mass'. */
    public static String mass(BigDecimal more) {
        return more.signum() == 0
                ? "same mass"
                : String.format(Locale.ROOT, "%,.1f kg ", more.abs()) + (more.signum() > 0 ? "more" : "less");
    }

    /** '12 days later', '1 day sooner', 'same lead time'. */
    public static String days(int later) {
        if (later == 0) {
            return "same lead time";
        }
        int days = Math.abs(later);
        return days + (days == 1 ? " day " : " days ") + (later > 0 ? "later" : "sooner");
    }

    /** '1,152 valid orders remain', '1 valid order remains', or that nobody knows how many, and why. */
    public static String orders(Count count, String several, String one) {
        if (count instanceof Count.Exactly exactly) {
            boolean single = exactly.orders().equals(BigInteger.ONE);
            return String.format(Locale.ROOT, "%,d valid ", exactly.orders())
                    + (single ? "order " + one : "orders " + several);
        }
        return "an unknown number of valid orders " + several + " (" + ((Count.GivenUp) count).why() + ")";
    }

    /** 'In 1,152 of 20,736 orders, 5.56 %.' */
    public static String share(Count some, Count all) {
        if (!(some instanceof Count.Exactly part) || !(all instanceof Count.Exactly whole)) {
            Count unknown = some instanceof Count.GivenUp ? some : all;
            return "In an unknown share of the orders (" + ((Count.GivenUp) unknown).why() + ").";
        }
        if (whole.orders().signum() == 0) {
            return "There is no valid order.";
        }
        BigDecimal percent = new BigDecimal(part.orders())
                .movePointRight(2)
                .divide(new BigDecimal(whole.orders()), 2, RoundingMode.HALF_UP);
        return String.format(
                Locale.ROOT, "In %,d of %,d orders, %s %%.", part.orders(), whole.orders(), percent.toPlainString());
    }
}
