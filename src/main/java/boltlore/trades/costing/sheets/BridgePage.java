package boltlore.trades.costing.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.trades.costing.cost.FullCost;

/** How the full cost stands to the direct cost of the costed bill, so that nobody takes one for the other. */
final class BridgePage {

    private BridgePage() {}

    static PageBuilder of(FullCost cost, String footer) {
        return Page.named("Reconciliation")
                .footer(footer)
                .title("Full cost beside the costed bill")
                .add(BridgeTable.of(cost))
                .note(
                        "The costed bill adds up direct cost: bought parts, made parts at the part master's cost, coating. Full"
                                + " cost takes out the labour that those costs hold and puts in labour by operation, delivery and"
                                + " overhead. Every price rests on the full cost.");
    }
}
