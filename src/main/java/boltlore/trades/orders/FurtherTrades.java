package boltlore.trades.orders;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.catalogue.Workshop;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.sheets.CostSheet;
import boltlore.trades.costing.sheets.QuotationSheet;
import boltlore.trades.cutting.CutPlanner;
import boltlore.trades.cutting.sheets.CutSheet;
import boltlore.trades.picking.PickingList;
import boltlore.trades.shipping.By;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.Route;
import boltlore.trades.shipping.SellingPrice;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.Shipper;
import boltlore.trades.shipping.sheets.ShipSheet;
import boltlore.trades.shipping.sheets.ShipWords;
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

    /** Fabrication, engineering, sales, dispatch. */
    Stream<FurtherSheets> all() {
        return Stream.of(cut(), tested(), quoted(), shipped());
    }

    private FurtherSheets cut() {
        return FurtherSheets.of(
                List.of(), () -> CutSheet.of(CutPlanner.of(List.of(bill), catalogue, List.of()), workshop));
    }

    /** Nothing where the family does not say how its kits are tested. */
    private FurtherSheets tested() {
        TestPlan tests = TestPlanner.of(catalogue, bill);
        return tests.groups().isEmpty()
                ? FurtherSheets.NONE
                : new FurtherSheets(TestSheet.each(tests, workshop).toList(), List.of(), true);
    }

    /** Nothing where the order has no price; the bill says why. */
    private FurtherSheets quoted() {
        return pricing.found()
                .map(this::quoted)
                .orElse(new FurtherSheets(List.of(), List.of(), catalogue.prices() == null));
    }

    private FurtherSheets quoted(Calculation found) {
        return new FurtherSheets(
                List.of(
                        () -> QuotationSheet.of(found.quotation(), bill, weighing, catalogue),
                        () -> CostSheet.of(found)),
                List.of(),
                true);
    }

    /** By road, nobody having said where to; without values where the order has no price. */
    private FurtherSheets shipped() {
        SellingPrice price = SellingPrice.of(pricing).orElse(null);
        Route road = new Route(By.ROAD, List.of());
        Shipment shipment = Shipper.of(priced, price, PickingList.of(plan, bill), road);
        Consignment alone = new Consignment(List.of(shipment));
        return FurtherSheets.of(
                ShipWords.stopping(shipment, alone), () -> ShipSheet.of(shipment, alone, catalogue.finishes()));
    }
}
