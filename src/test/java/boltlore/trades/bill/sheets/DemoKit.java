package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.bill.BillMaker;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import boltlore.findings.Findings;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import boltlore.report.Report;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.orders.KitTrades;
import boltlore.trades.picking.PickingList;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** A demo order of the shipped catalogue, resolved and made into a bill. */
public record DemoKit(FamilyPlan plan, Bill bill) {

    private static final Path CATALOG = Path.of("catalog");

    /** Reading takes a moment, so all tests share one catalogue. */
    private static final Resolver RESOLVER = new RuleResolver(sound(CatalogueReader.read(CATALOG)));

    public static DemoKit of(String order) {
        Catalogue catalogue = RESOLVER.catalogue();
        Path file = CATALOG.resolve("orders").resolve(order.toLowerCase(Locale.ROOT) + ".json");
        return of(sound(OrderReader.read(file, catalogue)));
    }

    static DemoKit of(Order order) {
        Resolution resolution = sound(new OrderResolver(RESOLVER).resolve(order, List.of()));
        FamilyPlan plan = RESOLVER.plan(order.family());
        return new DemoKit(plan, BillMaker.make(plan, order, (Resolution.Resolved) resolution));
    }

    /** The workshop's own workbook. */
    public Report billBook() {
        return BillReport.compose(
                pricing(),
                PickingList.of(plan, bill),
                List.of(KitTrades.byRules(bill.resolved(), Findings.NONE, bill.order())));
    }

    /** The workbook that goes with the kit. */
    public Report contents() {
        return ContentsReport.compose(plan, bill, PickingList.of(plan, bill));
    }

    public CostedBill priced() {
        return pricing().costed();
    }

    /** On the day of the order. */
    public OrderPricing pricing() {
        LocalDate placed = Objects.requireNonNull(bill.order().placed());
        return OrderPricing.of(bill, plan.catalogue(), new QuoteRequest(placed, null, null));
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new IllegalStateException(outcome.faults().toString());
    }
}
