package boltlore.trades.costing.sheets;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.PriceBook;
import boltlore.catalogue.PriceStep;
import boltlore.catalogue.Profit;
import boltlore.measure.Digits;
import boltlore.measure.Money;
import boltlore.trades.costing.quote.Calculation;
import java.util.Currency;

/** How a price came about, in words for the workshop. */
public final class PriceWords {

    private PriceWords() {}

    /** 'by a margin of 22 % of the price'. */
    static String profit(Profit profit) {
        String percent = Digits.plain(profit.percent()) + " %";
        return profit.isMargin()
                ? "by a margin of " + percent + " of the price"
                : "by a mark-up of " + percent + " on the cost";
    }

    static String rounded(Calculation calculation) {
        PriceBook prices = calculation.cost().prices();
        String way = prices.step().way() == PriceStep.Way.UP ? "up to" : "to the nearest";
        ExchangeRate rate = calculation.quotation().rate();
        String through = rate == null ? "" : "at " + Digits.plain(rate.forOne()) + " of " + rate.date() + ", ";
        return through + "rounded " + way + " " + Digits.plain(prices.step().step());
    }

    /** What discount and rounding leave. */
    public static String left(Calculation calculation) {
        Currency currency = calculation.cost().priced().currency();
        String amount = currency.getCurrencyCode() + " "
                + Money.rounded(calculation.left().abs(), currency).toPlainString();
        return calculation.left().signum() < 0
                ? "This quotation makes a loss: it is " + amount + " below the full cost."
                : "After discount and rounding " + amount + " are left above the full cost, a margin of "
                        + calculation.marginLeftPercent().toPlainString() + " % of the price before tax.";
    }
}
