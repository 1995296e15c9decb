package boltlore.trades.orders;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Workshop;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.sheets.TestSheet;
import boltlore.trades.weighing.Weigher;
import boltlore.trades.weighing.Weighing;
import java.util.List;
import java.util.stream.Stream;

/** What each further trade makes of one order. */
final class FurtherTrades {

    private final FamilyPlan plan;
    private final Catalogue catalogue;
    private final Workshop workshop;
    private final Family family;
    private final PricedBill priced;
    private final Bill bill;
    private final Weighing weighing;
    private final OrderPricing pricing;

    FurtherTrades(FamilyPlan plan, OrderPricing pricing) {
        this.plan = plan;
        this.catalogue = plan.catalogue();
        this.workshop = catalogue.workshop();
        this.family = plan.family();
        this.pricing = pricing;
        this.priced = pricing.priced();
        this.bill = priced.bill();
        this.weighing = Weigher.weigh(catalogue, family, bill);
    }

    /** Fabrication, engineering, sales. */
    Stream<FurtherSheets> all() {
        return Stream.of(tested());
    }

    /** Nothing where the family does not say how its kits are tested. */
    private FurtherSheets tested() {
        TestPlan tests = TestPlanner.of(catalogue, bill);
        return tests.groups().isEmpty()
                ? FurtherSheets.NONE
                : new FurtherSheets(TestSheet.each(tests, workshop).toList(), List.of(), true);
    }
}
