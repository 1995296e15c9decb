package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;
import static boltlore.trades.bill.sheets.PriceBlock.value;

import boltlore.catalogue.ExchangeRate;
import boltlore.catalogue.PriceStep;
import boltlore.report.Formula;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The way from full cost to what the customer pays, as live formulas: whoever changes a cost above sees price and margin
 * follow. Terms stand in them as numbers; prices of extras do too, for each is agreed or rounded for itself.
 */
record PriceFormulas(Calculation found) {

    private static final Formula HUNDRED = fixed(BigDecimal.valueOf(100));

    /** A spreadsheet's binary fractions stay clear of the next step up. */
    private static final int STEADY = 6;

    Formula of(String key) {
        Quotation quotation = found.quotation();
        return switch (key) {
            case "kitPrice" -> kitPrice(quotation);
            case "extras" -> fixed(quotation.extrasPrice());
            case "discount" ->
                percent(list(quotation), quotation.discountPercent().negate());
            case "tax" ->
                percent(
                        value("net"),
                        quotation.tax() == null
                                ? BigDecimal.ZERO
                                : quotation.tax().percent());
            case "total" -> sum(value("net"), value("tax"));
            case "margin" -> margin(quotation);
            default -> quotation.discount().signum() == 0 ? list(quotation) : sum(list(quotation), value("discount"));
        };
    }

    /** By mark-up or margin, turned into the quoted currency, rounded to the step. */
    private Formula kitPrice(Quotation quotation) {
        BigDecimal percent = found.profit().percent();
        Formula price = found.profit().isMargin()
                ? value("full").over(fixed(BigDecimal.ONE).minus(fixed(percent).over(HUNDRED)))
                : product(
                        value("full"), sum(fixed(BigDecimal.ONE), fixed(percent).over(HUNDRED)));
        int coins = new MinorUnit(found.cost().costed().currency()).digits();
        PriceStep step = found.cost().prices().step();
        Formula steps = inQuoted(price.rounded(coins), quotation.rate()).over(fixed(step.step()));
        Formula whole = step.way() == PriceStep.Way.UP ? steps.rounded(STEADY).roundedUp() : steps.rounded(0);
        return product(whole, fixed(step.step())).rounded(new MinorUnit(quotation.currency()).digits());
    }

    private static Formula inQuoted(Formula atHome, @Nullable ExchangeRate rate) {
        return rate == null ? atHome : product(atHome, fixed(rate.forOne()));
    }

    private static Formula list(Quotation quotation) {
        return quotation.extras().isEmpty() ? value("kitPrice") : sum(value("kitPrice"), value("extras"));
    }

    private Formula percent(Formula of, BigDecimal percent) {
        return product(of, fixed(percent))
                .over(HUNDRED)
                .rounded(new MinorUnit(found.quotation().currency()).digits());
    }

    /** What is left of the price before tax, in the workshop's currency, after the full cost of kit and extras. */
    private Formula margin(Quotation quotation) {
        BigDecimal extras = found.cost().ofExtras().total();
        Formula cost = extras.signum() == 0 ? value("full") : sum(value("full"), fixed(extras));
        ExchangeRate rate = quotation.rate();
        Formula net = rate == null ? value("net") : value("net").over(fixed(rate.forOne()));
        return quotation.net().signum() == 0
                ? fixed(BigDecimal.ZERO)
                : product(HUNDRED, fixed(BigDecimal.ONE).minus(cost.over(net))).rounded(2);
    }
}
