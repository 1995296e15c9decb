package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.report.SheetFile;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.weighing.Weigher;
import boltlore.trades.weighing.Weighing;
import boltlore.trades.weighing.sheets.WeighSheet;
import java.util.List;

/** An order's weighing with what it stands on. */
record WeighedOrder(Catalogue catalogue, Family family, Weighing weighing) implements WorkedOrder {

    static WeighedOrder of(Catalogue catalogue, Bill bill) {
        Family family = bill.resolved().choices().family();
        return new WeighedOrder(catalogue, family, Weigher.of(catalogue, family, bill));
    }

    @Override
    public String name() {
        return weighing.bill().order().name();
    }

    /** In a folder of the order's name. */
    @Override
    public List<SheetFile> files() {
        return SheetFormats.of(List.of(WeighSheet.of(weighing, family, catalogue.workshop())));
    }
}
