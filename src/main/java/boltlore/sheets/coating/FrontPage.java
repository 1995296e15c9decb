package boltlore.sheets.coating;

import boltlore.catalogue.Workshop;
import boltlore.coating.CoatPlan;
import boltlore.coating.CoatPlanner;
import boltlore.order.Order;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.Particulars;
import boltlore.sheets.ParticularsBuilder;

/** The first page: orders and their dates, cautions, all batches and send-outs at a glance. */
final class FrontPage {

    static final String NAME = "Overview";

    private FrontPage() {}

    static PageBuilder of(CoatPlan plan, Workshop workshop, String footer) {
        PageBuilder page = Page.named(NAME).landscape().footer(footer);
        page.title("Powder-coat batch sheet").add(particulars(plan, workshop));
        CoatingCautions.on(page, plan, workshop);
        notes(page, plan);
        if (!plan.batches().isEmpty() || !plan.sendOuts().isEmpty()) {
            page.heading("Batches and send-outs, earliest need first").add(OverviewTable.of(plan));
        }
        return page.signatures("Released to the coating shop by", "Taken over by");
    }

    private static void notes(PageBuilder page, CoatPlan plan) {
        if (plan.isEmpty()) {
            page.note("Nothing in these orders is coated.");
        }
        if (!plan.heldBack().isEmpty()) {
            page.note("Some pieces are held back and not to be coated: see the page 'Held back'.");
        }
    }

    private static ParticularsBuilder particulars(CoatPlan plan, Workshop workshop) {
        ParticularsBuilder particulars =
                Particulars.named("orders").say("workshop", "Workshop", workshop.name() + ", " + workshop.place());
        for (Order order : plan.orders()) {
            String needBy = CoatWords.day(CoatPlanner.needBy(order, workshop.assemblyDays()));
            particulars.say("order-" + order.name(), "Order " + order.name(), "coated and in store by " + needBy);
        }
        return particulars;
    }
}
