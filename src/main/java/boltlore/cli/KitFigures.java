package boltlore.cli;

import boltlore.pricing.PricedBill;
import java.math.RoundingMode;

/** A priced kit in one line of figures. */
final class KitFigures {

    private KitFigures() {}

    static String of(PricedBill priced) {
        String currency = priced.currency().getCurrencyCode();
        return "%s kg, cost %s %s, price %s %s, %d days"
                .formatted(
                        priced.totals()
                                .massKg()
                                .setScale(1, RoundingMode.HALF_UP)
                                .toPlainString(),
                        currency,
                        priced.totals().cost().toPlainString(),
                        currency,
                        priced.totalPrice().toPlainString(),
                        priced.leadDays());
    }
}
