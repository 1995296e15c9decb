package boltlore.trades.costing.sheets;

import boltlore.bill.Item;
import boltlore.bill.Origin;
import boltlore.catalogue.PriceBook;
import boltlore.measure.LineName;
import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;

/** What is in the kit, by sub-system, in the words of its positions; brackets that carry nothing stand elsewhere. */
final class IncludedTable {

    private IncludedTable() {}

    static TableBuilder of(QuotedOrder quoted) {
        TableBuilder table = Table.named("included")
                .columns(
                        Column.text("sub-system", quoted.phrases().say("subSystem"))
                                .atMost(28),
                        Column.text("what", quoted.phrases().say("what")).atMost(96));
        Map<String, Set<String>> positions = positions(quoted);
        Optional<PriceBook> prices = quoted.prices();
        for (String subSystem : quoted.catalogue().workshop().subSystems()) {
            Set<String> some = positions.get(subSystem);
            if (some != null) {
                String called = prices.map(book -> book.called(subSystem, quoted.language()))
                        .orElse(subSystem);
                table.row().put("sub-system", called).put("what", String.join("; ", some));
            }
        }
        return table;
    }

    private static Map<String, Set<String>> positions(QuotedOrder quoted) {
        SortedSet<LineName> unused = quoted.bill().resolved().kit().unused();
        Map<String, Set<String>> positions = new LinkedHashMap<>();
        for (Item item : quoted.bill().items()) {
            if (item.origin() instanceof Origin.OwnLine && !unused.contains(item.line())) {
                positions
                        .computeIfAbsent(item.position().subSystem(), any -> new LinkedHashSet<>())
                        .add(item.position().says().in(quoted.language()));
            }
        }
        return positions;
    }
}
