package boltlore.sheets.orders;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.picking.PickingList;
import boltlore.pricing.PricedBill;
import boltlore.resolution.FamilyPlan;
import boltlore.sheets.Workbook;
import boltlore.sheets.bill.BillWorkbook;
import boltlore.sheets.bill.ContentsWorkbook;
import boltlore.sheets.coating.CoatSheet;
import boltlore.sheets.picking.PickingSheet;
import java.util.List;
import java.util.function.Supplier;

/** The workbooks that every order needs, each to be made when it is written. */
public final class OrderSheets {

    private OrderSheets() {}

    /** Bill, contents list, picking list and powder-coat batch of an order that nothing stops. */
    public static List<Supplier<Workbook>> of(FamilyPlan plan, PricedBill priced) {
        Catalogue catalogue = plan.catalogue();
        Bill bill = priced.bill();
        PickingList packed = PickingList.of(plan, bill);
        return List.of(
                () -> BillWorkbook.of(priced, packed),
                () -> ContentsWorkbook.of(plan, bill, packed),
                () -> PickingSheet.of(catalogue, bill, packed),
                () -> CoatSheet.of(List.of(bill), catalogue));
    }
}
