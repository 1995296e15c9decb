package boltlore.choosing;

import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.resolution.Finding;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.Quotation;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * The best complete kit that keeps some choices, proved: no other is better by its aim.
 *
 * @param choices complete, resolved and with no finding that stops; of kits that are equally good the one with the usual
 *     values, then the first ones
 * @param pricing of the order with these choices
 * @param sum what the aim compares: full cost of the kit in the workshop's currency (direct cost where it has not written
 *     down how it prices), or mass in kg; with the aim soonest cost
 * @param grain conditions are compared to this step
 * @param ties values of further options that equally good kits have
 * @param passedOver findings that stop kits which would have been better
 */
public record BestKit(
        Aim aim,
        Choices choices,
        OrderPricing pricing,
        BigDecimal sum,
        BigDecimal grain,
        SortedMap<OptionName, List<OptionValue>> ties,
        List<Finding> passedOver) {

    /** Before tax, after discount, with the order's extras, in the currency that is quoted; empty where it has none. */
    public Optional<BigDecimal> price() {
        return pricing.quotation().map(Quotation::net);
    }

    public BigDecimal massKg() {
        return pricing.costed().totals().massKg();
    }

    public int leadDays() {
        return pricing.leadDays();
    }
}
