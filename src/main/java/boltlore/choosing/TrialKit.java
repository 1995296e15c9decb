package boltlore.choosing;

import boltlore.bill.BillMaker;
import boltlore.faults.Outcome;
import boltlore.findings.Severity;
import boltlore.order.Order;
import boltlore.resolution.Finding;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An order as it would be if it were placed now.
 *
 * @param stops findings that would stop its sheets
 * @param priced null where the choices are not a valid order
 */
record TrialKit(List<Finding> stops, @Nullable OrderPricing priced) {

    /** @param order which leaves out no line wrongly */
    static TrialKit of(Resolver resolver, Order order, QuoteRequest asked) {
        Outcome<Resolution> outcome = resolver.resolve(order.choices(), order.leftOut());
        Resolution resolution = ((Outcome.Sound<Resolution>) outcome).value();
        List<Finding> stops = resolution.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
        return resolution instanceof Resolution.Resolved resolved
                ? new TrialKit(stops, priced(resolver, order, resolved, asked))
                : new TrialKit(stops, null);
    }

    /** Of choices that are a valid order. */
    OrderPricing pricing() {
        return Objects.requireNonNull(priced);
    }

    private static OrderPricing priced(
            Resolver resolver, Order order, Resolution.Resolved resolved, QuoteRequest asked) {
        return OrderPricing.of(
                BillMaker.make(resolver.plan(order.family()), order, resolved), resolver.catalogue(), asked);
    }
}
