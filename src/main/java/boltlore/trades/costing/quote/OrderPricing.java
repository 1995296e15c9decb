package boltlore.trades.costing.quote;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.PriceBook;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Pricing;
import boltlore.trades.costing.cost.FullCosting;
import boltlore.trades.costing.path.LeadPath;
import java.util.Optional;

/**
 * What an order costs, sells for, and how long it takes: the one computation behind every price, lead time and order-by
 * date that is shown of an order.
 *
 * @param costed its bill with direct costs and times
 * @param calculation from full cost to quotation; faults where the workshop has not written down how it prices, or an
 *     exchange rate has run out: then the order has no price, and no other figure stands in for it
 */
public record OrderPricing(CostedBill costed, Outcome<Calculation> calculation) {

    private static final Outcome<Calculation> NO_PRICES = Outcome.faulty(Fault.of(
            "workshop/pricing.json",
            "nothing of that name",
            "what labour, overhead and delivery cost, and how a price is made of it",
            "Add it; catalog/README.md says how."));

    public static OrderPricing of(Bill bill, Catalogue catalogue, QuoteRequest asked) {
        CostedBill costed = Pricing.cost(bill, catalogue);
        PriceBook prices = catalogue.prices();
        return new OrderPricing(
                costed,
                prices == null
                        ? NO_PRICES
                        : Quoting.calculate(FullCosting.cost(costed, prices), asked, costed.leadDays()));
    }

    public LeadPath path() {
        return costed.times().path();
    }

    public int leadDays() {
        return costed.leadDays();
    }

    public Optional<Calculation> found() {
        return calculation instanceof Outcome.Sound<Calculation> sound ? Optional.of(sound.value()) : Optional.empty();
    }

    public Optional<Quotation> quotation() {
        return found().map(Calculation::quotation);
    }

    /** 'No price: no exchange rate of USD …'; empty where there is a price. */
    public String whyNoPrice() {
        return calculation.faults().stream()
                .findFirst()
                .map(fault -> "no price: " + fault.file() + " holds " + fault.found() + ", not " + fault.expected())
                .orElse("");
    }
}
