package boltlore.trades.orders;

import boltlore.bill.Bill;
import boltlore.report.Report;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.FoundBy;
import boltlore.trades.bill.sheets.BillReport;
import boltlore.trades.bill.sheets.ContentsReport;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import java.util.List;
import java.util.function.Supplier;

/** The workbooks that every order needs beside those of trades, each to be made when it is written. */
public final class OrderSheets {

    private OrderSheets() {}

    /** Bill and contents list of an order that nothing stops. */
    public static List<Supplier<Report>> prepare(FamilyPlan plan, OrderPricing pricing, List<FoundBy> found) {
        Bill bill = pricing.costed().bill();
        PickingList packed = PickingList.of(plan, bill);
        return List.of(
                () -> BillReport.compose(pricing, packed, found), () -> ContentsReport.compose(plan, bill, packed));
    }
}
