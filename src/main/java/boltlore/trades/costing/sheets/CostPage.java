package boltlore.trades.costing.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.quote.Calculation;
import boltlore.trades.costing.quote.Quotation;

/** The first page: the full cost by element, and the price made of it. */
final class CostPage {

    private CostPage() {}

    static PageBuilder of(Calculation calculation, String footer) {
        FullCost cost = calculation.cost();
        PageBuilder page = Page.named("Cost").footer(footer).title("Cost statement, for the workshop only");
        page.add(head(calculation));
        page.heading("Full cost").add(ElementsTable.of(cost)).picture(CostBars.of(cost));
        page.heading("From cost to price").add(PriceTable.of(calculation)).note(PriceWords.left(calculation));
        return page;
    }

    private static ParticularsBuilder head(Calculation calculation) {
        Order order = calculation.cost().priced().bill().order();
        Workshop workshop = calculation.cost().priced().catalogue().workshop();
        Quotation quotation = calculation.quotation();
        ParticularsBuilder says = Particulars.named("order")
                .say("workshop", "Workshop", workshop.name() + ", " + workshop.place())
                .say("order", "Order", order.name())
                .say("customer", "Customer", order.customer());
        if (!order.partner().isEmpty()) {
            says.say("partner", "Partner workshop", order.partner());
        }
        return says.say("on", "Quoted on", quotation.on())
                .say("currency", "Costs in", workshop.currency().getCurrencyCode())
                .say("lead", "Lead time", quotation.leadDays() + " days");
    }
}
