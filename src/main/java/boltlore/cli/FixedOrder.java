package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.report.SheetFile;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.fixings.FixingsMaker;
import boltlore.trades.fixings.KitFixings;
import boltlore.trades.fixings.sheets.FixingsSheet;
import boltlore.trades.orders.SheetFormats;
import java.util.List;

/** An order's fixings with what they stand on. */
record FixedOrder(Catalogue catalogue, KitFixings fixings) implements WorkedOrder {

    static FixedOrder of(FamilyPlan plan, Bill bill) {
        return new FixedOrder(plan.catalogue(), FixingsMaker.of(plan, bill));
    }

    @Override
    public String name() {
        return fixings.bill().order().name();
    }

    /** In a folder of the order's name. */
    @Override
    public List<SheetFile> files() {
        return SheetFormats.of(List.of(FixingsSheet.of(fixings, catalogue.workshop())));
    }
}
