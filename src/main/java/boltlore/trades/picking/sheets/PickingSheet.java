package boltlore.trades.picking.sheets;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.order.Order;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.trades.picking.PickingList;

/** The picking list of one order: the walk, pages for what does not lie on it, serial numbers, bags by fit stage. */
public final class PickingSheet {

    private PickingSheet() {}

    public static Workbook of(Catalogue catalogue, Bill bill, PickingList list) {
        Order order = bill.order();
        WorkbookBuilder workbook = Workbook.of("picking-list", "Picking list " + order.name())
                .about("Order " + order.name() + ", " + order.customer())
                .by(catalogue.workshop().name());
        if (order.placed() != null) {
            workbook.dated(order.placed());
        }
        pages(workbook, catalogue, new Head(catalogue, order), list);
        return workbook.build();
    }

    private static void pages(WorkbookBuilder workbook, Catalogue catalogue, Head head, PickingList list) {
        Amounts amounts = Amounts.of(list);
        FinishNames finishes = new FinishNames(catalogue);
        workbook.page(WalkPage.of(list, head, amounts));
        if (!list.fromCoating().isEmpty()) {
            workbook.page(CoatingPage.of(list.fromCoating(), head, finishes, amounts));
        }
        if (!list.extras().isEmpty()) {
            workbook.page(ExtrasPage.of(list.extras(), head, amounts));
        }
        if (!list.heldBack().isEmpty()) {
            workbook.page(HeldBackPage.of(list.heldBack(), head, finishes, amounts));
        }
        SerialsPage serials = new SerialsPage(list, head);
        if (!serials.isEmpty()) {
            workbook.page(serials.page());
        }
        BagsPage bags = new BagsPage(catalogue, head, finishes, amounts);
        list.bags().forEach(stage -> workbook.page(bags.of(stage)));
    }
}
