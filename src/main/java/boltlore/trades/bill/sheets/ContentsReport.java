package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.order.Order;
import boltlore.report.Phrases;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.resolution.FamilyPlan;
import boltlore.trades.picking.PickingList;

/**
 * What customer and partner get with the kit: what is in it, in the order's language. It is made from the bill without
 * prices, so that no cost can stand in it.
 */
public final class ContentsReport {

    private ContentsReport() {}

    /** The words of the contents list in that language. */
    static Phrases phrases(String language) {
        return Phrases.of(ContentsReport.class, "contents", language);
    }

    public static Report compose(FamilyPlan plan, Bill bill, PickingList packed) {
        Order order = bill.order();
        Phrases phrases = phrases(order.language());
        ReportBuilder book = Report.named("contents", phrases.say("title"))
                .about(phrases.say("order") + " " + order.name())
                .by(plan.catalogue().workshop().name())
                .in(order.language());
        if (order.placed() != null) {
            book.dated(order.placed());
        }
        return book.page(new ContentsPage(plan, bill, packed, phrases).page()).build();
    }
}
