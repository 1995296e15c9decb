package boltlore.trades.bill.sheets;

import boltlore.report.CautionNotes;
import boltlore.report.PageBuilder;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.quote.OrderPricing;
import java.util.List;
import java.util.SortedSet;

/** All findings, who waived what, what stands outside the kit, and the cautions. */
final class FindingsPage {

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final List<FoundBy> found;
    private final OrderHead head;

    FindingsPage(OrderPricing pricing, OrderHead head, List<FoundBy> found) {
        this.found = found;
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
    }

    PageBuilder page() {
        PageBuilder page =
                head.page(PageNames.FINDINGS, "Findings and cautions").print(head.portrait());
        findings(page);
        ExtrasTable.add(page, pricing);
        page.heading("Cautions");
        SortedSet<String> codes = costed.bill().resolved().kit().cautionsOn("bill");
        CautionNotes.add(page, codes, costed.catalogue().workshop(), "Caution", "en");
        return page.signatures("Checked by", "Released by");
    }

    private void findings(PageBuilder page) {
        if (FindingTables.all(found).findAny().isEmpty()) {
            page.note("Nothing was found that a person must check or know of.");
        } else {
            page.add(FindingTables.findings(found));
        }
        if (!costed.bill().order().waived().isEmpty()) {
            page.heading("What was waived, and by whom")
                    .add(FindingTables.waivers(costed.bill().order()));
        }
    }
}
