package boltlore.cli;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.report.SheetFile;
import boltlore.trades.orders.SheetFormats;
import boltlore.trades.testing.TestPlan;
import boltlore.trades.testing.TestPlanner;
import boltlore.trades.testing.sheets.EmptyRecord;
import boltlore.trades.testing.sheets.TestSheet;
import java.util.List;
import java.util.stream.Stream;

/** An order's tests with what they stand on. */
record TestedOrder(Catalogue catalogue, TestPlan plan) implements WorkedOrder {

    static TestedOrder of(Catalogue catalogue, Bill bill) {
        return new TestedOrder(catalogue, TestPlanner.of(catalogue, bill));
    }

    @Override
    public String name() {
        return plan.order();
    }

    /** In a folder of the order's name: the sheets, and records to be filled in. */
    @Override
    public List<SheetFile> files() {
        return Stream.concat(
                        SheetFormats.of(TestSheet.of(plan, catalogue.workshop())).stream(),
                        EmptyRecord.of(plan).stream())
                .toList();
    }
}
