package boltlore.trades.bill.sheets;

import boltlore.report.CautionNotes;
import boltlore.report.PageBuilder;
import boltlore.trades.costing.PricedBill;
import boltlore.trades.costing.quote.OrderPricing;
import java.util.SortedSet;

/** All findings, who waived what, what stands outside the kit, and the cautions. */
final class FindingsPage {

    private final OrderPricing pricing;
    private final PricedBill priced;
    private final OrderHead head;

    FindingsPage(OrderPricing pricing, OrderHead head) {
        this.pricing = pricing;
        this.priced = pricing.priced();
        this.head = head;
    }

    PageBuilder page() {
        PageBuilder page =
                head.page(PageNames.FINDINGS, "Findings and cautions").print(head.portrait());
        findings(page);
        ExtrasTable.add(page, pricing);
        page.heading("Cautions");
        SortedSet<String> codes = priced.bill().resolved().kit().cautionsOn("bill");
        CautionNotes.add(page, codes, priced.catalogue().workshop(), "Caution", "en");
        return page.signatures("Checked by", "Released by");
    }

    private void findings(PageBuilder page) {
        FindingTables says = new FindingTables(priced.bill());
        if (priced.bill().resolved().findings().isEmpty()) {
            page.note("Nothing was found that a person must look at or know of.");
        } else {
            page.add(says.findings());
        }
        if (!priced.bill().order().waived().isEmpty()) {
            page.heading("What was waived, and by whom").add(says.waivers());
        }
    }
}
