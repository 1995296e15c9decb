package boltlore.sheets.orders;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.charging.Charging;
import boltlore.charging.Electrician;
import boltlore.coating.CoatPlanner;
import boltlore.cutting.CutPlanner;
import boltlore.fixings.FixingsMaker;
import boltlore.fixings.KitFixings;
import boltlore.picking.PickingList;
import boltlore.pricing.PricedBill;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.Workbook;
import boltlore.sheets.charging.ChargeSheet;
import boltlore.sheets.charging.ChargeWords;
import boltlore.sheets.coating.CoatJob;
import boltlore.sheets.coating.HangingSheet;
import boltlore.sheets.cutting.CutSheet;
import boltlore.sheets.fixings.FixingsSheet;
import boltlore.sheets.shipping.ShipPrice;
import boltlore.sheets.shipping.ShipSheet;
import boltlore.sheets.shipping.ShipWords;
import boltlore.sheets.testing.TestSheet;
import boltlore.sheets.weighing.WeighSheet;
import boltlore.sheets.weighing.WeighWords;
import boltlore.shipping.By;
import boltlore.shipping.Consignment;
import boltlore.shipping.Route;
import boltlore.shipping.Shipment;
import boltlore.shipping.Shipper;
import boltlore.testing.TestPlan;
import boltlore.testing.TestPlanner;
import boltlore.weighing.Weigher;
import boltlore.weighing.Weighing;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The workbooks of the other trades.
 *
 * @param workbooks each to be made when it is written
 * @param stops what must be mended before the kit goes out, a sentence each
 */
public record FurtherSheets(List<Supplier<Workbook>> workbooks, List<String> stops) {

    public static final FurtherSheets NONE = new FurtherSheets(List.of(), List.of());

    /** Those of an order that nothing stops: from the hanging plan to the shipping papers. */
    public static FurtherSheets of(FamilyPlan plan, PricedBill priced) {
        Catalogue catalogue = plan.catalogue();
        Family family = plan.family();
        Bill bill = priced.bill();
        Weighing weighing = Weigher.of(catalogue, family, bill);
        Charging charging = Electrician.of(family.electrics(), bill, null, null);
        KitFixings fixings = FixingsMaker.of(plan, bill);
        Shipment shipment = shipment(plan, priced);
        Consignment alone = new Consignment(List.of(shipment));
        return new FurtherSheets(
                withTests(
                        catalogue,
                        bill,
                        List.of(
                                () -> HangingSheet.of(CoatJob.of(CoatPlanner.of(List.of(bill), catalogue), catalogue)),
                                () -> CutSheet.of(
                                        CutPlanner.of(List.of(bill), catalogue, List.of()), catalogue.workshop()),
                                () -> WeighSheet.of(weighing, family, catalogue.workshop()),
                                () -> ChargeSheet.of(charging, catalogue.workshop()),
                                () -> FixingsSheet.of(fixings, catalogue.workshop()),
                                () -> ShipSheet.of(shipment, alone, catalogue.finishes()))),
                Stream.of(
                                WeighWords.stopping(weighing),
                                ChargeWords.stopping(charging),
                                fixings.stopping(),
                                ShipWords.stopping(shipment, alone))
                        .flatMap(List::stream)
                        .toList());
    }

    /** By road, nobody having said where to. */
    private static Shipment shipment(FamilyPlan plan, PricedBill priced) {
        PickingList list = PickingList.of(plan, priced.bill());
        return Shipper.of(priced, ShipPrice.usual(priced), list, new Route(By.ROAD, List.of()));
    }

    /** Test sheet and papers come last, where the family says how its kits are tested. */
    private static List<Supplier<Workbook>> withTests(Catalogue catalogue, Bill bill, List<Supplier<Workbook>> others) {
        TestPlan plan = TestPlanner.of(catalogue, bill);
        return plan.groups().isEmpty()
                ? others
                : Stream.concat(others.stream(), TestSheet.each(plan, catalogue.workshop()))
                        .toList();
    }
}
