package boltlore.choosing;

import boltlore.bill.Costs;
import boltlore.bill.Item;
import boltlore.bill.Masses;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Source;
import boltlore.choices.Choices;
import boltlore.oracle.Completions;
import boltlore.resolution.Resolver;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.costing.PricedBill;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every complete kit that keeps some choices and that nothing stops, built and priced one by one. */
record Enumerated(List<Built> kits) {

    record Built(Choices choices, BigDecimal cost, BigDecimal massKg, int leadDays) {}

    static Enumerated of(Resolver resolver, Choices partial) {
        List<Built> all = new ArrayList<>();
        Completions.visit(partial, choices -> {
            TrialKit kit = TrialKit.of(resolver, choices);
            if (kit.stops().isEmpty()) {
                PricedBill bill = kit.bill();
                all.add(new Built(
                        choices,
                        unroundedCost(resolver.catalogue(), bill),
                        Masses.kitKg(bill.bill()),
                        bill.leadDays()));
            }
            return true;
        });
        return new Enumerated(all);
    }

    static BigDecimal unroundedCost(Catalogue catalogue, PricedBill bill) {
        return bill.bill().items().stream()
                .map(item -> coating(catalogue, item))
                .reduce(Costs.kit(bill.bill()), BigDecimal::add);
    }

    private static BigDecimal coating(Catalogue catalogue, Item item) {
        Finish finish = catalogue.finishes().get(item.finish());
        BigDecimal own = finish == null
                ? BigDecimal.ZERO
                : CoatingCost.of(item, finish, catalogue.workshop().coating());
        return item.part().source() == Source.BUY
                ? own
                : item.inside().stream().map(child -> coating(catalogue, child)).reduce(own, BigDecimal::add);
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
