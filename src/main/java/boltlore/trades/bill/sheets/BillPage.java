package boltlore.trades.bill.sheets;

import boltlore.report.PageBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.quote.OrderPricing;

/** The costed bill of materials: all levels, grouped by sub-system. */
final class BillPage {

    private static final String ROUNDING =
            "Each row is rounded half-up to the smallest coin; sums add rounded rows. Quantities hold for the"
                    + " whole kit; cost is quantity / (1 − scrap) × unit cost. An assembly's own cost stands in its"
                    + " row and its parts add theirs; what is bought has its parts in its own cost. Mass adds up"
                    + " over parts, so an assembly shows its mass for one only.";

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final OrderHead head;

    BillPage(OrderPricing pricing, OrderHead head) {
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
    }

    PageBuilder page() {
        return head.page(PageNames.BILL, "Costed bill of materials")
                .add(BillTable.compose(costed))
                .heading("From cost to price")
                .add(PriceBlock.worked(pricing))
                .heading("Mass")
                .add(PriceBlock.masses(costed))
                .note(ROUNDING)
                .frozen(4);
    }
}
