package boltlore.trades.coating.sheets;

import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.coating.CoatPlan;
import boltlore.trades.coating.OrderThrough;
import java.util.List;

/** The first page: orders and their dates, cautions, all batches and send-outs at a glance. */
final class FrontPage {

    static final String NAME = "Overview";

    private static final int ORDERS_NAMED = 6;

    private FrontPage() {}

    static PageBuilder of(CoatJob job, String footer) {
        CoatPlan plan = job.plan();
        PageBuilder page = Page.named(NAME).landscape().footer(footer);
        page.title("Powder-coat batch sheet").add(particulars(job));
        CoatingCautions.on(page, plan, job.workshop());
        notes(page, job);
        if (!plan.batches().isEmpty() || !plan.sendOuts().isEmpty()) {
            page.heading("Batches and send-outs, earliest need first").add(OverviewTable.of(plan));
        }
        return page.signatures("Released to the coating shop by", "Taken over by");
    }

    private static void notes(PageBuilder page, CoatJob job) {
        CoatPlan plan = job.plan();
        if (plan.isEmpty()) {
            page.note("Nothing in these orders is coated.");
        }
        if (!plan.heldBack().isEmpty()) {
            page.note("Some pieces are held back and not to be coated: see the page 'Held back'.");
        }
        if (!plan.runs().isEmpty()) {
            page.note("Booth and oven: " + PlanWords.work(job) + ".");
        }
    }

    private static ParticularsBuilder particulars(CoatJob job) {
        String workshop = job.workshop().name() + ", " + job.workshop().place();
        ParticularsBuilder particulars = Particulars.named("orders").say("workshop", "Workshop", workshop);
        List<OrderThrough> orders = job.through();
        if (orders.size() > ORDERS_NAMED) {
            return particulars.say("orders", "Orders", orders.size() + ", see the page 'Orders'");
        }
        orders.forEach(order -> order(particulars, order));
        return particulars;
    }

    private static void order(ParticularsBuilder particulars, OrderThrough order) {
        String name = order.order().name();
        particulars.say("order-" + name, "Order " + name, "coated and in store by " + CoatWords.day(order.needBy()));
    }
}
