package boltlore.trades.bill.sheets;

import boltlore.findings.Findings;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import java.util.List;

/** The workshop's own workbook of one order: at a glance, costed bill, to buy, to make, job cards. */
public final class BillReport {

    private BillReport() {}

    /**
     * The workbook of a priced order.
     *
     * @param packed what stores hand out of it, and what they hold back
     * @param found all that was found of the kit, by whom
     */
    public static Report compose(OrderPricing pricing, PickingList packed, List<FoundBy> found) {
        CostedBill costed = pricing.costed();
        List<Job> jobs = Job.of(costed);
        OrderHead head = new OrderHead(costed.bill().order(), costed.catalogue());
        return head.book("bill", "Costed bill of materials")
                .found(found.stream().map(FoundBy::findings).reduce(Findings.NONE, Findings::and))
                .page(new GlancePage(pricing, head, found).page())
                .page(new FindingsPage(pricing, head, found).page())
                .page(new BillPage(pricing, head).page())
                .page(new BuyPage(pricing, head).page())
                .page(new MakePage(costed, head, jobs, packed.onHold()).page())
                .page(new JobCardsPage(costed, head, jobs).page())
                .build();
    }
}
