package boltlore.trades.cutting.sheets;

import boltlore.catalogue.Workshop;
import boltlore.order.Order;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.cutting.CutPlan;
import boltlore.trades.cutting.CutPlan.NotCut;
import java.util.List;

/** The first page: orders and their dates, cautions, all materials at a glance. */
final class FrontPage {

    private static final String BOUND =
            "'At least' is a cost that no way of cutting these pieces can be under; where the gap is 0, this list is proved to"
                    + " be the cheapest. Remnants at hand cost nothing here.";

    private static final String ASSUMED =
            "Lengths are over all, from long point to long point. Every bar, a remnant too, is trimmed at the head. All pieces"
                    + " of one part come off one bar, so that no part mixes heats. Slanted ends of one angle lie against each"
                    + " other, parted by one cut, where the section may be turned over; elsewhere pieces lie one behind the"
                    + " other.";

    private FrontPage() {}

    static PageBuilder of(CutPlan plan, Workshop workshop, String footer) {
        PageBuilder page = Page.named("Overview").landscape().footer(footer);
        page.title("Cutting list").add(particulars(plan, workshop));
        if (plan.isEmpty()) {
            return page.note("Nothing in these orders is cut.");
        }
        CutCautions.on(page, plan);
        plan.notCut().forEach(not -> page.note(words(not)));
        if (!plan.heldBack().isEmpty()) {
            page.note("Some parts are held back and not to be cut: see the page 'Held back'.");
        }
        if (!plan.materials().isEmpty()) {
            page.heading("Bars").add(MaterialsTable.of(plan.materials(), workshop.currency()));
            page.note(BOUND).note(ASSUMED);
        }
        return page.signatures("Released to the saw by", "Taken over by");
    }

    private static String words(NotCut not) {
        return "Not planned: " + not.set().mark() + " from '" + not.material() + "', "
                + (not.bars() == null
                        ? "of which no bars are known."
                        : "which is longer than the longest bar gives, "
                                + not.bars().longest().lengthMm() + " mm before its head trim.");
    }

    private static ParticularsBuilder particulars(CutPlan plan, Workshop workshop) {
        ParticularsBuilder particulars =
                Particulars.named("orders").say("workshop", "Workshop", workshop.name() + ", " + workshop.place());
        List<Order> orders = plan.orders();
        for (Order order : orders) {
            String due = order.due() == null ? "no date set" : "due " + order.due();
            particulars.say("order-" + order.name(), "Order " + order.name(), due);
        }
        return particulars;
    }
}
