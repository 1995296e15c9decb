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
        PageBuilder page = Page.named(PageNames.ORDER);
        order(page);
        totals(page);
        page.heading("Price").add(PriceBlock.shown(priced));
        page.heading("Time").add(TimeBlock.of(priced));
        ExtrasTable.add(page, priced);
        cautions(page);
        return page.signatures("Checked by", "Released by").footer(head.footer());
    }

    private void order(PageBuilder page) {
        Order order = priced.bill().order();
        OrderTables says = new OrderTables(priced);
        page.title("Order " + order.name() + " at a glance")
                .add(particulars(order))
                .heading("What was chosen")
                .add(says.choices())
                .heading("What to look at");
        addOrSay(page, says.findings(), "Nothing was found that a person must look at.");
        if (!order.waived().isEmpty()) {
            page.heading("What was waived, and by whom").add(says.waivers());
        }
    }

    private void totals(PageBuilder page) {
        page.heading("Cost, mass and lead time by sub-system")
                .add(TotalsTable.of(priced))
                .charts(
                        bars("Cost by sub-system", "Cost (" + priced.currency() + ")", "cost"),
                        bars("Mass by sub-system", "Mass (kg)", "mass"));
    }

    private static BarChart bars(String title, String axis, String values) {
        return new BarChart(title, axis, TotalsTable.NAME, "subSystem", values);
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
