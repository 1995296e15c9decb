package boltlore.trades.bill.sheets;

import boltlore.findings.Findings;
import boltlore.report.PageBuilder;
import boltlore.report.Report;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.Job;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.picking.PickingList;
import java.util.List;

/** The workshop's own workbook of one order: at a glance, costed bill, to buy, to make; and its job cards. */
public final class BillReport {

    private static final String ROUNDING =
            "Rows are rounded half-up to the smallest coin; sums add rounded rows. Quantities hold for the whole kit; cost is"
                    + " quantity / (1 − scrap) × unit cost. An assembly shows its own cost and its mass for one, its parts add"
                    + " theirs; what is bought has its parts in its cost.";

    private static final String BELOW =
            "What is bought for other parts, bolts above all, stands once in each sub-system, after the parts that are there by"
                    + " themselves. On the screen the bill follows below by position, with what asks for each.";

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
                .page(bill(pricing, head))
                .page(new BuyPage(pricing, head, packed).page())
                .page(new MakePage(costed, head, jobs, packed.onHold()).page())
                .data(new JobCardsPage(costed, head, jobs).table())
                .build();
    }

    /** A card for each part that the workshop makes; no cost stands on it. */
    public static Report jobCards(CostedBill costed) {
        OrderHead head = new OrderHead(costed.bill().order(), costed.catalogue());
        return head.book("job-cards", "Job cards")
                .page(new JobCardsPage(costed, head, Job.of(costed)).page())
                .build();
    }

    /** All levels, grouped by sub-system. */
    private static PageBuilder bill(OrderPricing pricing, OrderHead head) {
        CostedBill costed = pricing.costed();
        return head.page(PageNames.BILL, "Costed bill of materials")
                .print(head.portrait())
                .add(ShortBill.compose(costed))
                .heading("From cost to price")
                .add(PriceBlock.worked(pricing))
                .add(PriceBlock.masses(costed))
                .note(BELOW + " " + ROUNDING)
                .add(BillTable.compose(costed).belowThePaper())
                .frozen(3);
    }
}
