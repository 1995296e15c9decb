package boltlore.choosing;

import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.CoatingShop;
import boltlore.catalogue.Finish;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.measure.OptionName;
import boltlore.order.LeftOut;
import boltlore.order.Order;
import boltlore.order.OrderTerms;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.Pricing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A kit as it would be if these choices were ordered now, every bracket in it.
 *
 * @param stops findings that would stop its sheets
 * @param priced null where the choices are not a valid order
 */
record TrialKit(List<Finding> stops, @Nullable PricedBill priced) {

    static TrialKit of(Resolver resolver, Choices choices) {
        Outcome<Resolution> outcome = resolver.resolve(choices, new LeftOut.Undecided());
        Resolution resolution = ((Outcome.Sound<Resolution>) outcome).value();
        List<Finding> stops = resolution.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
        return resolution instanceof Resolution.Resolved resolved
                ? new TrialKit(stops, priced(resolver, resolved))
                : new TrialKit(stops, null);
    }

    /** Of choices that are a valid order. */
    PricedBill bill() {
        return Objects.requireNonNull(priced);
    }

    private static PricedBill priced(Resolver resolver, Resolution.Resolved resolved) {
        Catalogue catalogue = resolver.catalogue();
        CoatingShop shop = catalogue.workshop().coating();
        String family = resolved.choices().family().name();
        return Pricing.of(BillMaker.of(resolver.plan(family), bare(resolved.choices()), resolved), catalogue, item -> {
            Finish finish = catalogue.finishes().get(item.finish());
            return finish == null ? BigDecimal.ZERO : CoatingCost.of(item, finish, shop);
        });
    }

    private static Order bare(Choices choices) {
        String family = choices.family().name();
        return new Order(
                "",
                family,
                "",
                "",
                "en",
                null,
                null,
                null,
                choices,
                none(),
                none(),
                List.of(),
                new LeftOut.Undecided(),
                List.of(),
                List.of(),
                "",
                OrderTerms.NONE);
    }

    private static SortedSet<OptionName> none() {
        return new TreeSet<>();
    }
}
