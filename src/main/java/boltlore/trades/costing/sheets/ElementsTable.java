package boltlore.trades.costing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;

/** The full cost of kit and extras by element, with each element's share. */
final class ElementsTable {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private ElementsTable() {}

    static TableBuilder of(FullCost cost) {
        Currency currency = cost.priced().currency();
        TableBuilder table = Table.named("elements")
                .columns(
                        Column.text("element", "Element"),
                        Column.money("kit", "Kit", currency),
                        Column.money("extras", "Extras", currency),
                        Column.percent("share", "Share of all", 1));
        Elements kit = cost.kit();
        Elements extras = cost.ofExtras();
        for (Element element : Element.values()) {
            table.row()
                    .put("element", element.says())
                    .put("kit", kit.of(element))
                    .put("extras", extras.of(element))
                    .put("share", share(kit.of(element).add(extras.of(element)), cost.total()));
        }
        table.total("total", "Full cost").sum("kit", kit.total()).sum("extras", extras.total());
        return table;
    }

    /** In per cent; 0 of nothing. */
    static BigDecimal share(BigDecimal part, BigDecimal whole) {
        return whole.signum() == 0 ? BigDecimal.ZERO : part.multiply(HUNDRED).divide(whole, MathContext.DECIMAL128);
    }
}
