package boltlore.trades.bill.sheets;

import boltlore.bill.Bill;
import boltlore.explanation.FindingWords;
import boltlore.order.Order;
import boltlore.order.Waiver;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.resolution.Finding;
import boltlore.resolution.Severity;
import boltlore.trades.charging.PowerNote;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Findings and waivers as tables. */
final class FindingTables {

    private static final int SENTENCE = 60;

    private static final Column[] FINDINGS = {
        Column.text("weight", "Weight").atMost(16),
        Column.text("finding", "Finding").atMost(22),
        Column.text("sentence", "What it says").atMost(SENTENCE)
    };

    private static final Column[] WAIVERS = {
        Column.text("finding", "Finding").atMost(26),
        Column.text("who", "Who").atMost(14),
        Column.date("when", "When"),
        Column.text("why", "Why").atMost(40)
    };

    private final Bill bill;
    private final Order order;

    FindingTables(Bill bill) {
        this.bill = bill;
        this.order = bill.order();
    }

    /** '2 look at it, 6 for information'; 'none'. */
    static String count(Bill bill) {
        Map<Severity, Long> counts = bill.resolved().findings().stream()
                .collect(Collectors.groupingBy(Finding::severity, TreeMap::new, Collectors.counting()));
        return counts.isEmpty()
                ? "none"
                : counts.entrySet().stream()
                        .map(count -> count.getValue() + " " + count.getKey().says())
                        .collect(Collectors.joining(", "));
    }

    TableBuilder findings() {
        TableBuilder table = Table.named("findings").columns(FINDINGS);
        bill.resolved()
                .findings()
                .forEach(finding -> table.row()
                        .put("weight", finding.severity().says())
                        .put("finding", finding.kind().written())
                        .put("sentence", sentence(finding)));
        return table;
    }

    /** The finding's sentence with the power that it comes to. */
    String sentence(Finding finding) {
        String figure =
                PowerNote.of(finding, order.choices()).map(note -> "; " + note).orElse("");
        return new FindingWords(order.choices().family()).of(finding) + figure;
    }

    TableBuilder waivers() {
        TableBuilder table = Table.named("waivers").columns(WAIVERS);
        order.waived()
                .forEach(waiver -> table.row()
                        .put("finding", waived(waiver))
                        .put("who", waiver.who())
                        .put("when", waiver.when())
                        .put("why", waiver.why()));
        return table;
    }

    private static String waived(Waiver waiver) {
        return waiver.subject().isEmpty() ? waiver.finding() : waiver.finding() + ": " + waiver.subject();
    }
}
