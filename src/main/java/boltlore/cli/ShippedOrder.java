package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.sheets.SheetFile;
import boltlore.sheets.orders.SheetFormats;
import boltlore.sheets.shipping.ShipSheet;
import boltlore.shipping.Consignment;
import boltlore.shipping.Shipment;
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
