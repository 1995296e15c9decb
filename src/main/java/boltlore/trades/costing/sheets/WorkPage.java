package boltlore.trades.costing.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.Work;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;

/** Labour and outside work by operation. */
final class WorkPage {

    private WorkPage() {}

    static PageBuilder of(FullCost cost, String footer) {
        return Page.named("Work")
                .footer(footer)
                .title("Work by operation")
                .add(table(cost.work(), cost.priced().currency()))
                .note("Set-up minutes are the kit's share: a lot's set-up divided by the pieces of the lot, "
                        + cost.prices().lots().usual()
                        + " where a part has no lot of its own. Minutes count what is issued, scrap with it.");
    }

    private static TableBuilder table(List<Work> all, Currency currency) {
        TableBuilder table = Table.named("work")
                .columns(
                        Column.text("operation", "Operation"),
                        Column.text("who", "Where").atMost(12),
                        Column.money("rate", "Rate per hour", currency),
                        Column.decimal("set-up-min", "Set-up", 1).in("min"),
                        Column.decimal("run-min", "Run", 1).in("min"),
                        Column.money("set-up", "Set-up", currency),
                        Column.money("run", "Run", currency));
        all.forEach(work -> table.row()
                .put("operation", work.rate().operation())
                .put("who", work.rate().outside() ? "outside" : "our own")
                .put("rate", work.rate().perHour())
                .put("set-up-min", work.setUpMin())
                .put("run-min", work.runMin())
                .put("set-up", work.setUp())
                .put("run", work.run()));
        table.total("total", "All work")
                .sum("set-up-min", sum(all, Work::setUpMin))
                .sum("run-min", sum(all, Work::runMin))
                .sum("set-up", sum(all, Work::setUp))
                .sum("run", sum(all, Work::run));
        return table;
    }

    private static BigDecimal sum(List<Work> all, Function<Work, BigDecimal> each) {
        return all.stream().map(each).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
