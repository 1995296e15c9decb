package boltlore.trades.orders;

import boltlore.report.Report;
import boltlore.trades.KitInWork;
import boltlore.trades.bill.sheets.BillReport;
import boltlore.trades.bill.sheets.ContentsReport;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import boltlore.trades.picking.PickingTrade;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** The workbooks that every order needs beside those of trades, each to be made when it is written. */
public final class OrderSheets {

    private OrderSheets() {}

    /**
     * The bill of an order that nothing stops.
     *
     * @param jobCards whether a card for each made part is asked for too
     */
    public static List<Supplier<Report>> prepare(
            KitInWork kit, OrderPricing pricing, KitTrades trades, boolean jobCards) {
        PickingList packed = PickingTrade.list(kit);
        List<Supplier<Report>> sheets =
                new ArrayList<>(List.of(() -> BillReport.compose(pricing, packed, trades.found())));
        if (jobCards) {
            sheets.add(() -> BillReport.jobCards(pricing.costed()));
        }
        return sheets.stream()
                .<Supplier<Report>>map(sheet -> () -> trades.headed("kit", sheet.get()))
                .toList();
    }

    /** The list of what is in the kit, which leaves the house and so lies in a folder with what else does. */
    public static Supplier<Report> contents(KitInWork kit, KitTrades trades) {
        return () -> trades.headedForCustomers(ContentsReport.compose(kit.plan(), kit.bill(), PickingTrade.list(kit)));
    }
}
