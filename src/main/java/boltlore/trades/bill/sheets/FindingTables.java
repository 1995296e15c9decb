package boltlore.trades.bill.sheets;

import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.order.Order;
import boltlore.order.Waiver;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.FoundBy;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings and waivers as tables. */
final class FindingTables {

    private static final int SENTENCE = 60;

    private static final Column[] WAIVERS = {
        Column.text("finding", "Finding").atMost(26),
        Column.text("who", "Who").atMost(14),
        Column.date("when", "When"),
        Column.text("why", "Why").atMost(40)
    };

    /** A finding and who found it. */
    private record Row(String by, Finding finding) {}

    private static final TableSpec<Row> FINDINGS = TableSpec.<Row>named("findings")
            .text("severity", "Severity", 10, row -> row.finding().severity().says())
            .text("by", "By", 12, Row::by)
            .text("kind", "Finding", 22, row -> row.finding().kind().code())
            .text("says", "What was found", SENTENCE, row -> row.finding().says());

    private FindingTables() {}

    /** '2 Check, 6 Note'; 'none'. */
    static String count(List<FoundBy> found) {
        Map<Severity, Long> counts =
                all(found).collect(Collectors.groupingBy(Finding::severity, TreeMap::new, Collectors.counting()));
        return counts.isEmpty()
                ? "none"
                : counts.entrySet().stream()
                        .map(count -> count.getValue() + " " + count.getKey().says())
                        .collect(Collectors.joining(", "));
    }

    static Stream<Finding> all(List<FoundBy> found) {
        return found.stream().flatMap(by -> by.findings().all().stream());
    }

    /** The worst first, and by who found it. */
    static TableBuilder findings(List<FoundBy> found) {
        return FINDINGS.of(found.stream()
                .flatMap(by -> by.findings().all().stream().map(finding -> new Row(by.by(), finding)))
                .sorted(Comparator.comparing(row -> row.finding().severity()))
                .toList());
    }

    static TableBuilder waivers(Order order) {
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
