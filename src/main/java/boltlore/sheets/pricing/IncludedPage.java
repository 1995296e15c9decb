package boltlore.sheets.pricing;

import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;

/** What is in the kit, by sub-system. */
final class IncludedPage {

    private IncludedPage() {}

    static PageBuilder of(QuotedOrder quoted) {
        String included = quoted.phrases().say("included");
        return Page.named(included).print(quoted.print()).title(included).add(IncludedTable.of(quoted));
    }
}
