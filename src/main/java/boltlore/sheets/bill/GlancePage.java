package boltlore.sheets.bill;

import boltlore.order.Order;
import boltlore.pricing.PricedBill;
import boltlore.resolution.Kit;
import boltlore.sheets.BarChart;
import boltlore.sheets.Page;
import boltlore.sheets.PageBuilder;
import boltlore.sheets.ParticularsBuilder;
import boltlore.sheets.TableBuilder;
import java.util.TreeSet;

/** The front page: the order at a glance. */
final class GlancePage {

    private final PricedBill priced;
    private final OrderHead head;

    GlancePage(PricedBill priced, OrderHead head) {
        this.priced = priced;
        this.head = head;
    }

    PageBuilder page() {
        Order order = priced.bill().order();
        OrderTables says = new OrderTables(priced);
        PageBuilder page = Page.named(PageNames.ORDER)
                .title("Order " + order.name() + " at a glance")
                .add(particulars(order))
                .heading("What was chosen")
                .add(says.choices())
                .heading("What to look at");
        addOrSay(page, says.findings(), "Nothing was found that a person must look at.");
        if (!order.waived().isEmpty()) {
            page.heading("What was waived, and by whom").add(says.waivers());
        }
        page.heading("Cost, mass and lead time by sub-system").add(TotalsTable.of(priced));
        page.charts(
                new BarChart(
                        "Cost by sub-system",
                        "Cost (" + priced.currency() + ")",
                        TotalsTable.NAME,
                        "subSystem",
                        "cost"),
                new BarChart("Mass by sub-system", "Mass (kg)", TotalsTable.NAME, "subSystem", "mass"));
        page.heading("Price").add(PriceBlock.shown(priced));
        page.heading("Time").add(TimeBlock.of(priced));
        ExtrasTable.add(page, priced);
        cautions(page);
        return page.signatures("Checked by", "Released by").footer(head.footer());
    }

    private ParticularsBuilder particulars(Order order) {
        ParticularsBuilder says = head.particulars();
        OrderHead.day(says, "built", "Donor vehicle built", order.donorBuilt());
        if (!order.notes().isEmpty()) {
            says.say("notes", "Notes", order.notes());
        }
        return says;
    }

    private static void addOrSay(PageBuilder page, TableBuilder table, String otherwise) {
        if (table.build().rows().isEmpty()) {
            page.note(otherwise);
        } else {
            page.add(table);
        }
    }

    private void cautions(PageBuilder page) {
        Kit kit = priced.bill().resolved().kit();
        page.heading("Cautions");
        CautionNotes.add(
                page,
                kit.cautions().getOrDefault("bill", new TreeSet<>()),
                priced.catalogue().workshop(),
                "Caution",
                "en");
    }
}
