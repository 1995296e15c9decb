package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import boltlore.picking.PickingList;
import boltlore.pricing.PricedBill;
import boltlore.pricing.quote.Asked;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.SheetFile;
import boltlore.sheets.bill.BillWorkbook;
import boltlore.sheets.orders.SheetFormats;
import boltlore.sheets.shipping.ShipPrice;
import boltlore.sheets.shipping.ShipSheet;
import boltlore.shipping.Consignment;
import boltlore.shipping.Route;
import boltlore.shipping.Shipment;
import boltlore.shipping.Shipper;
import java.util.List;

/** An order in its crates, with what it stands on. */
record ShippedOrder(Catalogue catalogue, Shipment shipment) {

    static Outcome<ShippedOrder> of(FamilyPlan plan, Bill bill, Route route, Asked asked) {
        Catalogue catalogue = plan.catalogue();
        PricedBill priced = BillWorkbook.price(bill, catalogue);
        PickingList list = PickingList.of(plan, bill);
        return ShipPrice.of(priced, asked)
                .then(price -> Outcome.sound(new ShippedOrder(catalogue, Shipper.of(priced, price, list, route))));
    }

    String name() {
        return shipment.order().name();
    }

    /** In a folder of the order's name. */
    List<SheetFile> files(Consignment together) {
        return SheetFormats.of(List.of(ShipSheet.of(shipment, together, catalogue.finishes())));
    }
}
