package boltlore.trades.orders;

import boltlore.report.Workbook;
import boltlore.trades.FoundBy;
import boltlore.trades.KitInWork;
import boltlore.trades.bill.sheets.BillWorkbook;
import boltlore.trades.bill.sheets.ContentsWorkbook;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import boltlore.trades.picking.PickingTrade;
import java.util.List;
import java.util.function.Supplier;

/** The workbooks that every order needs beside those of trades, each to be made when it is written. */
public final class OrderSheets {

    private OrderSheets() {}

    /** Bill and contents list of an order that nothing stops. */
    public static List<Supplier<Workbook>> of(KitInWork kit, OrderPricing pricing, List<FoundBy> found) {
        PickingList packed = PickingTrade.list(kit);
        return List.of(() -> BillWorkbook.of(pricing, packed, found), () -> ContentsWorkbook.of(kit.plan(), kit.bill(), packed));
    }
}
