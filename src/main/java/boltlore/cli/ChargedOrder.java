package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.report.SheetFile;
import boltlore.trades.charging.Charging;
import boltlore.trades.charging.sheets.ChargeSheet;
import boltlore.trades.orders.SheetFormats;
import java.util.List;

/** An order's charging with what it stands on. */
record ChargedOrder(Catalogue catalogue, Charging charging) implements WorkedOrder {

    static ChargedOrder of(Catalogue catalogue, Bill bill, SupplyOption supply) {
        return new ChargedOrder(catalogue, supply.charging(bill));
    }

    @Override
    public String name() {
        return charging.bill().order().name();
    }

    /** In a folder of the order's name. */
    @Override
    public List<SheetFile> files() {
        return SheetFormats.of(List.of(ChargeSheet.of(charging, catalogue.workshop())));
    }
}
