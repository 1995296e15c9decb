package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.picking.PickingList;
import boltlore.pricing.PricedBill;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.SheetFile;
import boltlore.sheets.bill.BillWorkbook;
import boltlore.sheets.orders.SheetFormats;
import boltlore.sheets.shipping.ShipSheet;
import boltlore.shipping.Consignment;
import boltlore.shipping.Route;
import boltlore.shipping.Shipment;
import boltlore.shipping.Shipper;
import java.util.List;

/** An order in its crates, with what it stands on. */
record ShippedOrder(FamilyPlan plan, Shipment shipment) {

    static ShippedOrder of(FamilyPlan plan, Bill bill, Route route) {
        PricedBill priced = BillWorkbook.price(bill, plan.catalogue());
        return new ShippedOrder(plan, Shipper.of(priced, PickingList.of(plan, bill), route));
    }

    String name() {
        return shipment.order().name();
    }

    /** In a folder of the order's name. */
    List<SheetFile> files(Consignment together) {
        return SheetFormats.of(
                List.of(ShipSheet.of(shipment, together, plan.catalogue().finishes())));
    }
}
