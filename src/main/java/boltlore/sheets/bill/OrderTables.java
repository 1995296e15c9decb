package boltlore.sheets.bill;

import boltlore.catalogue.Option;
import boltlore.charging.PowerNote;
import boltlore.explanation.ChoiceWords;
import boltlore.explanation.FindingWords;
import boltlore.measure.Wording;
import boltlore.order.Order;
import boltlore.order.Waiver;
import boltlore.pricing.PricedBill;
import boltlore.resolution.Finding;
import boltlore.sheets.Column;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.util.List;

/** Tables of the front page: choices, findings, waivers. */
final class OrderTables {

    private static final int SENTENCE = 58;

    private final PricedBill priced;
    private final Order order;

    OrderTables(PricedBill priced) {
        this.priced = priced;
        this.order = priced.bill().order();
    }

    TableBuilder choices() {
        TableBuilder table = Table.named("choices")
                .columns(
                        Column.text("asked", "Asked").atMost(36),
                        Column.text("answer", "Answered").atMost(SENTENCE));
        List<String> answers = ChoiceWords.of(order, Wording.ENGLISH);
        List<Option> options = order.choices().family().options().stream()
                .filter(option -> order.choices().value(option.name()).isPresent())
                .toList();
        for (int i = 0; i < options.size(); i++) {
            table.row().put("asked", options.get(i).asks()).put("answer", answers.get(i));
        }
        return table;
    }

    TableBuilder findings() {
        TableBuilder table = Table.named("findings")
                .columns(
                        Column.text("weight", "Weight").atMost(16),
                        Column.text("finding", "Finding").atMost(22),
                        Column.text("sentence", "What it says").atMost(SENTENCE));
        priced.bill()
                .resolved()
                .findings()
                .forEach(finding -> table.row()
                        .put("weight", finding.severity().says())
                        .put("finding", finding.kind().written())
                        .put("sentence", sentence(finding)));
        return table;
    }

    private String sentence(Finding finding) {
        String figure =
                PowerNote.of(finding, order.choices()).map(note -> "; " + note).orElse("");
        return new FindingWords(order.choices().family()).of(finding) + figure;
    }

    TableBuilder waivers() {
        TableBuilder table = Table.named("waivers")
                .columns(
                        Column.text("finding", "Finding").atMost(26),
                        Column.text("who", "Who").atMost(14),
                        Column.date("when", "When"),
                        Column.text("why", "Why").atMost(40));
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
