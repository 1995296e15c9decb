package boltlore.cli;

import boltlore.trades.costing.PricedBill;
import java.math.RoundingMode;
import java.util.Locale;

/** A priced kit in one line of figures. */
final class KitFigures {

    private KitFigures() {}

    static String of(PricedBill priced) {
        String currency = priced.currency().getCurrencyCode();
        return String.format(
                Locale.ROOT,
                "%s kg, cost %s %,.2f, price %s %,.2f, %d days",
                priced.totals().massKg().setScale(1, RoundingMode.HALF_UP).toPlainString(),
                currency,
                priced.totals().cost(),
                currency,
                priced.totalPrice(),
                priced.leadDays());
    }
}
