package boltlore.trades.costing.sheets;

import boltlore.report.PageBuilder;
import java.util.List;

/** What the workshop never includes, and which options this order has not taken. */
final class NotIncluded {

    private NotIncluded() {}

    static void on(PageBuilder page, QuotedOrder quoted) {
        List<String> sentences = quoted.prices().stream()
                .flatMap(prices -> prices.excluded().stream())
                .map(says -> says.in(quoted.language()))
                .toList();
        if (!sentences.isEmpty()) {
            page.heading(quoted.phrases().say("notIncluded")).note(String.join(" ", sentences));
        }
        NotTaken.on(page, quoted);
    }
}
