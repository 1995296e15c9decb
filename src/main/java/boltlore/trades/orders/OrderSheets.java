package boltlore.trades.orders;

import boltlore.bill.Bill;
import boltlore.report.Workbook;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.FoundBy;
import boltlore.trades.bill.sheets.BillWorkbook;
import boltlore.trades.bill.sheets.ContentsWorkbook;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import java.util.List;
import java.util.function.Supplier;

/** The workbooks that every order needs beside those of trades, each to be made when it is written. */
public final class OrderSheets {

    private OrderSheets() {}

    /** Bill and contents list of an order that nothing stops. */
    public static List<Supplier<Workbook>> of(FamilyPlan plan, OrderPricing pricing, List<FoundBy> found) {
        Bill bill = pricing.priced().bill();
        PickingList packed = PickingList.of(plan, bill);
        return List.of(() -> BillWorkbook.of(pricing, packed, found), () -> ContentsWorkbook.of(plan, bill, packed));
    }
}
