package boltlore.choosing;

import boltlore.bill.Masses;
import boltlore.choices.Choices;
import boltlore.oracle.Completions;
import boltlore.order.Order;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every complete kit that keeps some choices and that nothing stops, built and priced one by one. */
record Enumerated(List<Built> kits) {

    record Built(Choices choices, OrderPricing pricing, BigDecimal cost, BigDecimal massKg, int leadDays) {
        BigDecimal price() {
            return pricing.quotation().orElseThrow().net();
        }
    }

    static Enumerated of(Resolver resolver, Choices partial) {
        return of(resolver, Order.draft(partial), new QuoteRequest(LocalDate.EPOCH, null, null));
    }

    static Enumerated of(Resolver resolver, Order draft, QuoteRequest asked) {
        List<Built> all = new ArrayList<>();
        Completions.visit(draft.choices(), choices -> {
            TrialKit kit = TrialKit.of(resolver, draft.withChoices(choices), asked);
            if (kit.stops().isEmpty()) {
                OrderPricing pricing = kit.pricing();
                all.add(new Built(
                        choices,
                        pricing,
                        cost(pricing),
                        Masses.kitKg(pricing.costed().bill()),
                        pricing.leadDays()));
            }
            return true;
        });
        return new Enumerated(all);
    }

    /** The full cost of the kit, or the direct one where the workshop has not written down how it prices. */
    static BigDecimal cost(OrderPricing pricing) {
        return pricing.found()
                .map(found -> found.cost().kit().total())
                .orElseGet(() -> pricing.costed().totals().cost());
    }

    BigDecimal leastCost() {
        return kits.stream().map(Built::cost).min(Comparator.naturalOrder()).orElseThrow();
    }

    BigDecimal mostCost() {
        return kits.stream().map(Built::cost).max(Comparator.naturalOrder()).orElseThrow();
    }

    BigDecimal leastMassKg() {
        return kits.stream().map(Built::massKg).min(Comparator.naturalOrder()).orElseThrow();
    }

    int leastDays() {
        return kits.stream().mapToInt(Built::leadDays).min().orElseThrow();
    }

    /** The least cost among kits that are ready soonest. */
    BigDecimal leastCostOfSoonest() {
        return kits.stream()
                .filter(kit -> kit.leadDays() == leastDays())
                .map(Built::cost)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }
}
