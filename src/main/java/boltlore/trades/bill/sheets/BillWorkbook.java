package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.findings.Findings;
import boltlore.report.Workbook;
import boltlore.trades.FoundBy;
import boltlore.trades.coating.CoatingCost;
import boltlore.trades.coating.ExtraCoating;
import boltlore.trades.costing.Job;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.Pricing;
import boltlore.trades.picking.PickingList;
import java.math.BigDecimal;
import java.util.List;

/** The workshop's own workbook of one order: at a glance, costed bill, to buy, to make, job cards. */
public final class BillWorkbook {

    private BillWorkbook() {}

    /** Prices the bill with what coating costs in this workshop. */
    public static PricedBill price(Bill bill, Catalogue catalogue) {
        return Pricing.of(
                bill, catalogue, item -> coating(item, catalogue), extra -> ExtraCoating.ofOne(extra, bill, catalogue));
    }

    private static BigDecimal coating(Item item, Catalogue catalogue) {
        Finish finish = catalogue.finishes().get(item.finish());
        return finish == null
                ? BigDecimal.ZERO
                : CoatingCost.of(item, finish, catalogue.workshop().coating());
    }

    /**
     * The workbook of a priced bill.
     *
     * @param packed what stores hand out of it, and what they hold back
     * @param found all that was found of the kit, by whom
     */
    public static Workbook of(PricedBill priced, PickingList packed, List<FoundBy> found) {
        List<Job> jobs = Job.of(priced);
        OrderHead head = new OrderHead(priced.bill().order(), priced.catalogue());
        return head.book("bill", "Costed bill of materials")
                .found(found.stream().map(FoundBy::findings).reduce(Findings.NONE, Findings::and))
                .page(new GlancePage(priced, head, found).page())
                .page(new FindingsPage(priced, head, found).page())
                .page(new BillPage(priced, head).page())
                .page(new BuyPage(priced, head).page())
                .page(new MakePage(priced, head, jobs, packed.heldBack()).page())
                .page(new JobCardsPage(priced, head, jobs).page())
                .build();
    }
}
