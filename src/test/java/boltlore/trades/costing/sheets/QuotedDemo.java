package boltlore.trades.costing.sheets;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.report.Report;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.costing.path.LeadPath;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.weighing.Weigher;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/** An order of the demo, priced by some catalogue, with its two workbooks. */
record QuotedDemo(Catalogue catalogue, Bill bill, Calculation calculation, LeadPath path) {

    private static final Path ORDERS = Path.of("catalog", "orders");

    static QuotedDemo of(Catalogue catalogue, String name) {
        Order order = sound(OrderReader.read(ORDERS.resolve(name + ".json"), catalogue));
        OrderResolver resolver = new OrderResolver(new RuleResolver(catalogue));
        Resolution.Resolved resolved = (Resolution.Resolved) sound(resolver.resolve(order, List.of()));
        Bill bill = BillMaker.make(resolver.resolver().plan(order.family()), order, resolved);
        LocalDate on = Objects.requireNonNull(order.placed());
        OrderPricing pricing = OrderPricing.of(bill, catalogue, new QuoteRequest(on, null, null));
        return new QuotedDemo(catalogue, bill, sound(pricing.calculation()), pricing.path());
    }

    static Catalogue catalogue(Path folder) {
        return sound(CatalogueReader.read(folder));
    }

    Report quotation() {
        return QuotationSheet.compose(
                calculation.quotation(),
                bill,
                Weigher.weigh(catalogue, bill.resolved().choices().family(), bill),
                catalogue);
    }

    Report costStatement() {
        return CostSheet.compose(calculation, Findings.NONE);
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }
}
