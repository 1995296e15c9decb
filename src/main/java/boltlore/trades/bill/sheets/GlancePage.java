package boltlore.trades.bill.sheets;

import boltlore.catalogue.BuildDate;
import boltlore.explanation.ChoiceWords;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
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
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

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
                .note("chosen", String.join(". ", ChoiceWords.say(order, head.language())) + ".");
        if (!order.notes().isEmpty()) {
            page.add(new Note(Look.NOTE, "order", "Notes on the order", order.notes()));
        }
        totals(page);
        page.add(PriceBlock.shown(pricing));
        toLookAt(page);
        return page.footer(head.footer());
    }

    /** What a person must look at is named on the front page; all findings stand on their own page. */
    private void toLookAt(PageBuilder page) {
        FindingsPage.all(found)
                .filter(finding -> finding.severity() != Severity.NOTE)
                .collect(Collectors.groupingBy(
                        Finding::severity,
                        TreeMap::new,
                        Collectors.mapping(
                                finding -> finding.kind().title(head.language()),
                                Collectors.toCollection(TreeSet::new))))
                .forEach((severity, kinds) -> page.add(new Note(
                        Look.NOTE,
                        "finding",
                        severity.says(head.language()) + ", see the findings",
                        String.join(", ", kinds))));
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
        BuildDate built = order.donorBuilt();
        if (built == null || built.isDay()) {
            OrderHead.day(says, "built", "Base vehicle built", built == null ? null : built.first());
        } else {
            says.say("built", "Base vehicle built", built.toString());
        }
        if (!order.chassis().isEmpty()) {
            says.say("chassis", "Chassis number", order.chassis());
        }
        pricing.quotation()
                .ifPresent(quotation ->
                        says.say("quoted-in", "Price in", quotation.currency().getCurrencyCode()));
        times(says);
        says.say("findings", "Findings", FindingsPage.count(found, head.language()));
        return says;
    }

    /** How long the kit takes, against the time there is. */
    private void times(ParticularsBuilder says) {
        int leadDays = costed.leadDays();
        says.say("lead", "Lead time of the kit", leadDays + " calendar days");
        Order order = costed.bill().order();
        if (order.due() == null) {
            return;
        }
        LocalDate first = order.due().minusDays(leadDays);
        says.say("first", "First part on order by", first);
        if (order.placed() != null) {
            long days = ChronoUnit.DAYS.between(order.placed(), first);
            says.say("slack", "From the order to then", days < 0 ? -days + " days too late" : days + " days to spare");
        }
    }
}
