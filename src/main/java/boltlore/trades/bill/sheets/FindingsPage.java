package boltlore.trades.bill.sheets;

import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.order.Waiver;
import boltlore.report.CautionNotes;
import boltlore.report.PageBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.FoundBy;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.quote.OrderPricing;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All findings, who waived what, what stands outside the kit, and the cautions. */
final class FindingsPage {

    /** A finding and who found it. */
    private record Row(String by, Finding finding) {}

    private static final TableSpec<Waiver> WAIVERS = TableSpec.<Waiver>named("waivers")
            .text("finding", "Finding", 26, FindingsPage::waived)
            .text("who", "Who", 14, Waiver::who)
            .date("when", "When", Waiver::when)
            .text("why", "Why", 40, Waiver::why);

    private final OrderPricing pricing;
    private final CostedBill costed;
    private final List<FoundBy> found;
    private final OrderHead head;

    FindingsPage(OrderPricing pricing, OrderHead head, List<FoundBy> found) {
        this.found = found;
        this.pricing = pricing;
        this.costed = pricing.costed();
        this.head = head;
    }

    PageBuilder page() {
        PageBuilder page =
                head.page(PageNames.FINDINGS, "Findings and cautions").print(head.portrait());
        findings(page);
        ExtrasTable.add(page, pricing);
        page.heading("Cautions");
        SortedSet<String> codes = costed.bill().resolved().kit().cautionsOn("bill");
        CautionNotes.add(page, codes, costed.catalogue().workshop(), "Caution", head.language());
        return page.signatures("Checked by", "Released by");
    }

    private static TableSpec<Row> spec(String language) {
        return TableSpec.<Row>named("findings")
                .text(
                        "severity",
                        "Severity",
                        10,
                        row -> row.finding().severity().says(language))
                .text("by", "By", 12, Row::by)
                .text("kind", "Finding", 22, row -> row.finding().kind().title(language))
                .text("says", "What was found", 60, row -> row.finding().says(language))
                .code("code", row -> row.finding().kind().code());
    }

    /** The worst first, and by who found it. */
    private void findings(PageBuilder page) {
        if (all(found).findAny().isEmpty()) {
            page.note("Nothing was found that a person must check or know of.");
        } else {
            page.add(spec(head.language())
                    .of(found.stream()
                            .flatMap(by -> by.findings().all().stream().map(finding -> new Row(by.by(), finding)))
                            .sorted(Comparator.comparing(row -> row.finding().severity()))
                            .toList()));
        }
        List<Waiver> waived = costed.bill().order().waived();
        if (!waived.isEmpty()) {
            page.heading("What was waived, and by whom").add(WAIVERS.of(waived));
        }
    }

    private static String waived(Waiver waiver) {
        return waiver.subject().isEmpty() ? waiver.finding() : waiver.finding() + ": " + waiver.subject();
    }

    /** '2 Check, 6 Note'; 'none'. */
    static String count(List<FoundBy> found, String language) {
        Map<Severity, Long> counts =
                all(found).collect(Collectors.groupingBy(Finding::severity, TreeMap::new, Collectors.counting()));
        return counts.isEmpty()
                ? "none"
                : counts.entrySet().stream()
                        .map(count -> count.getValue() + " " + count.getKey().says(language))
                        .collect(Collectors.joining(", "));
    }

    static Stream<Finding> all(List<FoundBy> found) {
        return found.stream().flatMap(by -> by.findings().all().stream());
    }
}
