package boltlore.trades.picking.sheets;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Caution;
import boltlore.order.Order;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.picking.PickingList;
import java.util.Collection;

/** What stands above and below the pages of a picking list. */
final class Head {

    private static final int REVISION_SHOWN = 8;

    private final Catalogue catalogue;
    private final Order order;

    Head(Catalogue catalogue, Order order) {
        this.catalogue = catalogue;
        this.order = order;
    }

    Order order() {
        return order;
    }

    /** 'Order BL-1001 · Some Customer · walk · catalogue 1a2b3c4d': what a sheet is when it has left its pile. */
    String footer(String page) {
        return String.join(" · ", "Order " + order.name(), order.customer(), page, "catalogue " + revision());
    }

    ParticularsBuilder particulars(PickingList list) {
        ParticularsBuilder head = Particulars.named("order")
                .say("order", "Order", order.name())
                .say("customer", "Customer", order.customer())
                .say(
                        "vehicle",
                        "Kit for",
                        catalogue.family(order.family()).says().english());
        if (!order.partner().isEmpty()) {
            head.say("partner", "Goes to", order.partner());
        }
        if (order.placed() != null) {
            head.say("placed", "Ordered", order.placed());
        }
        if (order.due() != null) {
            head.say("due", "Due", order.due());
        }
        return head.say("lines", "To pick", lines(list)).leave("trolley", "Trolley or pallet");
    }

    void cautions(PageBuilder page, Collection<String> codes) {
        for (String code : codes) {
            Caution caution = catalogue.workshop().cautions().get(code);
            if (caution != null) {
                page.caution(CautionWords.lead(code), caution.says().english());
            }
        }
    }

    private String revision() {
        String revision = catalogue.revision();
        return revision.substring(0, Math.min(REVISION_SHOWN, revision.length()));
    }

    /** '87 lines from bins, 12 from coating, 1 outside the kit, 2 held back'. */
    private static String lines(PickingList list) {
        return list.walk().size() + " lines from bins"
                + more(list.fromCoating(), "from coating")
                + more(list.extras(), "outside the kit")
                + more(list.heldBack(), "held back");
    }

    private static String more(Collection<?> rows, String words) {
        return rows.isEmpty() ? "" : ", " + rows.size() + " " + words;
    }
}
