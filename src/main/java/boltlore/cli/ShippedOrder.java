package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.report.SheetFile;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.shipping.Consignment;
import boltlore.trades.shipping.Shipment;
import boltlore.trades.shipping.sheets.ShipSheet;
import java.util.List;

/** An order in its crates, with what it stands on. */
record ShippedOrder(Catalogue catalogue, Shipment shipment, Consignment together) implements WorkedOrder {

    @Override
    public String name() {
        return shipment.order().name();
    }

    /** In a folder of the order's name. */
    @Override
    public List<SheetFile> files() {
        return SheetFormats.of(List.of(ShipSheet.of(shipment, together, catalogue.finishes())));
    }
}
