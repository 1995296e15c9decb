package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.order.Order;
import boltlore.report.Phrases;
import boltlore.report.Workbook;
import boltlore.report.WorkbookBuilder;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.picking.PickingList;

/**
 * What customer and partner get with the kit: what is in it, in the order's language. It is made from the bill without
 * prices, so that no cost can stand in it.
 */
public final class ContentsWorkbook {

    private ContentsWorkbook() {}

    /** The words of the contents list in that language. */
    static Phrases phrases(String language) {
        return Phrases.of(ContentsWorkbook.class, "contents", language);
    }

    public static Workbook of(FamilyPlan plan, Bill bill, PickingList packed) {
        Order order = bill.order();
        Phrases phrases = phrases(order.language());
        WorkbookBuilder book = Workbook.of("contents", phrases.say("title"))
                .about(phrases.say("order") + " " + order.name())
                .by(plan.catalogue().workshop().name());
        if (order.placed() != null) {
            book.dated(order.placed());
        }
        return book.page(new ContentsPage(plan, bill, packed, phrases).page()).build();
    }
}
