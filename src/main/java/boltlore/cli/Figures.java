package boltlore.cli;

import boltlore.choosing.BestKit;
import boltlore.logic.Count;
import boltlore.measure.Money;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;

/** Amounts and counts in words. */
final class Figures {

    private Figures() {}

    /** 'EUR 24,026.89', or 'EUR 24,026.89 to 39,506.38' where the ends differ. */
    static String range(BestKit cheapest, BestKit dearest) {
        String least = money(cheapest, cheapest.price());
        boolean same = cheapest.price().compareTo(dearest.price()) == 0;
        return same
                ? least
                : least + " to " + Money.figure(dearest.price(), dearest.bill().currency());
    }

    static String money(BestKit kit, BigDecimal amount) {
        return Money.says(amount, kit.bill().currency());
    }

    /** 'EUR 120.00 more', 'EUR 3.50 less', 'at the same price'. */
    static String difference(BestKit kit, BigDecimal more) {
        if (more.signum() == 0) {
            return "at the same price";
        }
        return money(kit, more.abs()) + (more.signum() > 0 ? " more" : " less");
    }

    /** '12 days later', '1 day sooner', 'in the same time'. */
    static String days(int later) {
        if (later == 0) {
            return "in the same time";
        }
        int days = Math.abs(later);
        return days + (days == 1 ? " day " : " days ") + (later > 0 ? "later" : "sooner");
    }

    /** '1,152 orders keep this', '1 order keeps this', or that nobody knows how many, and why. */
    static String orders(Count count, String several, String one) {
        if (count instanceof Count.Exactly exactly) {
            boolean single = exactly.orders().equals(BigInteger.ONE);
            return String.format(Locale.ROOT, "%,d ", exactly.orders())
                    + (single ? "order " + one : "orders " + several);
        }
        return "an unknown number of orders " + several + " (" + ((Count.GivenUp) count).why() + ")";
    }

    /** 'In 1,152 of 20,736 orders, 5.56 %.' */
    static String share(Count some, Count all) {
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

    static String currency(BestKit kit) {
        return kit.bill().currency().getCurrencyCode();
    }
}
