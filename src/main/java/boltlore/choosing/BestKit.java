package boltlore.choosing;

import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import boltlore.resolution.Finding;
import boltlore.trades.costing.PricedBill;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;

/**
 * The best complete kit that keeps some choices, proved: no other is better by its aim.
 *
 * @param choices complete, resolved and with no finding that stops; of kits that are equally good the one with the usual
 *     values, then the first ones
 * @param sum what the aim compares, unrounded: cost in the workshop's currency, or mass in kg; with the aim soonest cost
 * @param grain conditions are compared to this step
 * @param ties values of further options that equally good kits have
 * @param passedOver findings that stop kits which would have been better
 */
public record BestKit(
        Aim aim,
        Choices choices,
        PricedBill bill,
        BigDecimal sum,
        BigDecimal grain,
        SortedMap<OptionName, List<OptionValue>> ties,
        List<Finding> passedOver) {

    public BigDecimal cost() {
        return bill.totals().cost();
    }

    public BigDecimal price() {
        return bill.kitPrice().price();
    }

    public BigDecimal massKg() {
        return bill.totals().massKg();
    }

    public int leadDays() {
        return bill.leadDays();
    }
}
