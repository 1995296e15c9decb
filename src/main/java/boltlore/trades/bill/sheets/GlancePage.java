package boltlore.trades.bill.sheets;

import boltlore.explanation.ChoiceWords;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.report.BarChart;
import boltlore.report.Look;
import boltlore.report.Note;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.ParticularsBuilder;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.quote.OrderPricing;
import java.util.Comparator;
import java.util.List;

/** The front page: the order at a glance. */
final class GlancePage {

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final List<FoundBy> found;
    private final OrderHead head;

    GlancePage(OrderPricing pricing, OrderHead head, List<FoundBy> found) {
        this.found = found;
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
    }

    PageBuilder page() {
        Order order = costed.bill().order();
        PageBuilder page = Page.named(PageNames.ORDER)
                .title("Order " + order.name() + " at a glance")
                .add(particulars(order))
                .heading("What was chosen")
                .note("chosen", String.join(". ", ChoiceWords.say(order, Wording.ENGLISH)) + ".");
        if (!order.notes().isEmpty()) {
            page.add(new Note(Look.NOTE, "order", "Notes on the order", order.notes()));
        }
        totals(page);
        page.add(PriceBlock.shown(pricing));
        toLookAt(page);
        return page.footer(head.footer());
    }

    /** What a person must look at stands on the front page; all findings stand on their own page. */
    private void toLookAt(PageBuilder page) {
        FindingTables.all(found)
                .filter(finding -> finding.severity() != Severity.NOTE)
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(finding -> page.add(new Note(
                        Look.NOTE,
                        "finding",
                        finding.severity().says() + ", " + finding.kind().code(),
                        finding.says())));
    }

    private void totals(PageBuilder page) {
        page.heading("Cost, mass, lead time and price")
                .add(TotalsTable.compose(costed))
                .charts(
                        bars("Cost by sub-system", "Cost (" + costed.currency() + ")", "cost"),
                        bars("Mass by sub-system", "Mass (kg)", "mass"));
    }

    private static BarChart bars(String title, String axis, String values) {
        return new BarChart(title, axis, TotalsTable.NAME, "subSystem", values);
    }

    private ParticularsBuilder particulars(Order order) {
        ParticularsBuilder says = head.particulars();
        OrderHead.day(says, "built", "Base vehicle built", order.donorBuilt());
        pricing.quotation()
                .ifPresent(quotation ->
                        says.say("quoted-in", "Price in", quotation.currency().getCurrencyCode()));
        TimeBlock.add(says, costed);
        says.say("findings", "Findings", FindingTables.count(found));
        return says;
    }
}
