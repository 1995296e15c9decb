package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;

import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.Totals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Map;

/** Cost, mass and longest lead time by sub-system, taken from the sub-totals of the bill. */
final class TotalsTable {

    static final String NAME = "totals";

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private TotalsTable() {}

    static TableBuilder compose(CostedBill costed) {
        TableBuilder table = Table.named(NAME);
        columns(table, costed.currency());
        Totals kit = costed.totals();
        Map<String, Totals> sums = costed.bySubSystem();
        costed.rowsBySubSystem()
                .forEach((subSystem, items) ->
                        row(table.row(subSystem), items, sums.getOrDefault(subSystem, Totals.NONE), kit));
        table.total("kit", "Kit")
                .sum("rows", BigDecimal.valueOf(costed.rows().size()))
                .sum("partsAndManufacture", kit.own())
                .sum("coating", kit.coating())
                .sum("cost", kit.cost())
                .sum("mass", kit.massKg())
                .put("longestLead", costed.leadDays());
        return table;
    }

    private static void columns(TableBuilder table, Currency currency) {
        table.columns(
                Column.text("subSystem", "Sub-system").atMost(24),
                Column.whole("rows", "Rows"),
                Column.money("partsAndManufacture", "Parts and manufacture", currency),
                Column.money("coating", "Coating", currency),
                Column.money("cost", "Cost", currency),
                Column.percent("costShare", "Share of cost", 1),
                Column.decimal("mass", "Mass", 2).in("kg"),
                Column.percent("massShare", "Share of mass", 1),
                Column.whole("longestLead", "Longest lead time").in("days"));
    }

    private static void row(RowBuilder row, List<ItemCost> items, Totals some, Totals kit) {
        String subSystem = items.get(0).subSystem();
        row.put("subSystem", subSystem).put("rows", items.size()).put("longestLead", leadDays(items));
        figures(row, subSystem, some);
        share(row, "costShare", "cost", some.cost(), kit.cost());
        share(row, "massShare", "mass", some.massKg(), kit.massKg());
    }

    private static int leadDays(List<ItemCost> items) {
        return items.stream().mapToInt(item -> item.timing().startDays()).max().orElse(0);
    }

    private static void figures(RowBuilder row, String subSystem, Totals some) {
        row.put("partsAndManufacture", subtotal(subSystem, "extended"), some.own())
                .put("coating", subtotal(subSystem, "coating"), some.coating())
                .put("cost", sum(cell("partsAndManufacture"), cell("coating")), some.cost())
                .put("mass", subtotal(subSystem, "massExtended"), some.massKg());
    }

    private static void share(RowBuilder row, String column, String of, BigDecimal part, BigDecimal whole) {
        if (whole.signum() > 0) {
            BigDecimal percent =
                    part.multiply(HUNDRED).divide(whole, MathContext.DECIMAL128).setScale(1, RoundingMode.HALF_UP);
            Formula share = product(cell(of), fixed(HUNDRED)).over(cell(NAME, "kit", of));
            row.put(column, share.rounded(1), percent);
        }
    }

    private static Formula subtotal(String subSystem, String column) {
        return cell(PageNames.BILL, "bill", "subtotal-" + subSystem, column);
    }
}
