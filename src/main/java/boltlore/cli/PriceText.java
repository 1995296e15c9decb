package boltlore.cli;

import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.quote.Quotation;
import boltlore.trades.costing.sheets.LeadWords;
import boltlore.trades.costing.sheets.PriceWords;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Locale;

/** A calculation for the terminal. */
final class PriceText {

    private PriceText() {}

    static void print(Screen screen, PricedOrder order) {
        screen.heading(order.name() + ", " + order.bill().order().customer());
        cost(screen, order);
        quotation(screen, order.calculation().quotation());
        screen.wrapped(2, PriceWords.left(order.calculation()));
        screen.wrapped(2, LeadWords.chain(order.path()) + " " + LeadWords.gain(order.path()));
    }

    static String written(int orders, Path out) {
        return (orders == 1 ? "Cost statement and quotation" : orders + " cost statements and quotations")
                + " written to " + out + "; only what is under 'customer' leaves the house";
    }

    private static void cost(Screen screen, PricedOrder order) {
        Elements all =
                order.calculation().cost().kit().plus(order.calculation().cost().ofExtras());
        row(screen, "Cost in", order.catalogue().workshop().currency().getCurrencyCode());
        for (Element element : Element.values()) {
            if (all.of(element).signum() != 0) {
                row(screen, element.says(), amount(all.of(element)));
            }
        }
        row(screen, "Full cost", amount(all.total()));
    }

    private static void quotation(Screen screen, Quotation quotation) {
        row(screen, "Quoted in", quotation.currency().getCurrencyCode());
        row(screen, "Kit and extras", amount(quotation.listPrice()));
        if (quotation.discount().signum() != 0) {
            row(screen, "Discount", amount(quotation.discount().negate()));
        }
        row(screen, "Tax", amount(quotation.taxAmount()));
        row(screen, "The customer pays", amount(quotation.total()));
        screen.wrapped(2, "Quoted on " + quotation.on() + ", valid until " + quotation.validUntil() + ".");
    }

    private static void row(Screen screen, String what, String amount) {
        screen.text(String.format(Locale.ROOT, "  %-32s %14s%n", what, amount));
    }

    private static String amount(BigDecimal amount) {
        return String.format(Locale.ROOT, "%,." + amount.scale() + "f", amount);
    }
}
