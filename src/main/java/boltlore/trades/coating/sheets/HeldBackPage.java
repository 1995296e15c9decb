package boltlore.trades.coating.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.coating.BatchRow;
import java.util.List;

/** What is not to be coated until someone has decided about it. */
final class HeldBackPage {

    private HeldBackPage() {}

    static PageBuilder of(List<BatchRow> heldBack, String footer) {
        return Page.named("Held back")
                .landscape()
                .footer(footer)
                .title("Held back: do not coat")
                .note(
                        "These brackets carry nothing in their kit, and nobody has decided yet whether they are left out or"
                                + " kept. They are in no batch, load or send-out until this sheet is issued again.")
                .add(HeldBackTable.of(heldBack));
    }
}
