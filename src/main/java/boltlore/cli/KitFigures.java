package boltlore.cli;

import boltlore.measure.Money;
import boltlore.trades.costing.PricedBill;
import java.math.RoundingMode;

/** A priced kit in one line of figures. */
final class KitFigures {

    private KitFigures() {}

    static String of(PricedBill priced) {
        return priced.totals().massKg().setScale(1, RoundingMode.HALF_UP).toPlainString() + " kg, cost "
                + Money.says(priced.totals().cost(), priced.currency()) + ", price "
                + Money.says(priced.totalPrice(), priced.currency()) + ", " + priced.leadDays() + " days";
    }
}
