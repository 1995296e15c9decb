package boltlore.trades.costing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;

/** What is in the kit, by sub-system. */
final class IncludedPage {

    private IncludedPage() {}

    static PageBuilder of(QuotedOrder quoted) {
        String included = quoted.phrases().say("included");
        return Page.named(included).print(quoted.print()).title(included).add(IncludedTable.of(quoted));
    }
}
