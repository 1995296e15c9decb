package boltlore.trades.cutting.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.cutting.MaterialCuts;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;

/** One row for each material: what is bought for it, what it costs, and how good the list is known to be. */
final class MaterialsTable {

    private MaterialsTable() {}

    static TableBuilder of(List<MaterialCuts> all, Currency currency) {
        TableBuilder table = Table.named("materials").columns(columns(currency));
        all.forEach(cuts -> fill(table, cuts));
        table.total("total", "All materials")
                .sum(
                        "pieces",
                        BigDecimal.valueOf(
                                all.stream().mapToLong(MaterialCuts::pieces).sum()))
                .sum("cost", sum(all, MaterialCuts::cost))
                .sum("least", sum(all, MaterialCuts::atLeast));
        return table;
    }

    private static BigDecimal sum(List<MaterialCuts> all, Function<MaterialCuts, BigDecimal> of) {
        return all.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Column[] columns(Currency currency) {
        return new Column[] {
            Column.text("material", "Material").atMost(40),
            Column.whole("pieces", "Pieces"),
            Column.whole("remnants", "Remnants used"),
            Column.text("bars", "Bars to buy (mm)").atMost(24),
            Column.money("cost", "Cost", currency),
            Column.money("least", "At least", currency),
            Column.percent("gap", "Gap", 1),
            Column.percent("used", "Used", 1),
            Column.decimal("kept", "Kept", 1).in("mm"),
            Column.decimal("scrap", "Scrap", 1).in("mm")
        };
    }

    private static void fill(TableBuilder table, MaterialCuts cuts) {
        table.row(cuts.material().name())
                .put("material", cuts.material().says())
                .put("pieces", cuts.pieces())
                .put("remnants", cuts.bars().size() - cuts.bought())
                .put("bars", CutWords.bought(cuts))
                .put("cost", cuts.cost())
                .put("least", cuts.atLeast())
                .put("gap", cuts.gapPercent())
                .put("used", cuts.usedPercent())
                .put("kept", cuts.keptMm())
                .put("scrap", cuts.scrapMm());
    }
}
