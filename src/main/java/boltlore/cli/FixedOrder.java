package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.fixings.FixingsMaker;
import boltlore.fixings.KitFixings;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.SheetFile;
import boltlore.sheets.fixings.FixingsSheet;
import boltlore.sheets.orders.SheetFormats;
import java.util.List;

/** An order's fixings with what they stand on. */
record FixedOrder(Catalogue catalogue, KitFixings fixings) {

    static FixedOrder of(Catalogue catalogue, Bill bill) {
        FamilyPlan plan = new FamilyPlan(catalogue, bill.resolved().choices().family());
        return new FixedOrder(catalogue, FixingsMaker.of(plan, bill));
    }

    String name() {
        return fixings.bill().order().name();
    }

    /** In a folder of the order's name. */
    List<SheetFile> files() {
        return SheetFormats.of(List.of(FixingsSheet.of(fixings, catalogue.workshop())));
    }
}
