package boltlore.sheets.bill;

import static boltlore.sheets.Formula.cell;
import static boltlore.sheets.Formula.fixed;
import static boltlore.sheets.Formula.product;
import static boltlore.sheets.Formula.sum;

import boltlore.pricing.PricedBill;
import boltlore.pricing.PricedItem;
import boltlore.pricing.Totals;
import boltlore.sheets.Column;
import boltlore.sheets.Formula;
import boltlore.sheets.RowBuilder;
import boltlore.sheets.Table;
import boltlore.sheets.TableBuilder;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/** Cost, mass and longest lead time by sub-system, taken from the sub-totals of the bill. */
final class TotalsTable {

    static final String NAME = "totals";

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private TotalsTable() {}

    static TableBuilder of(PricedBill priced) {
        TableBuilder table = Table.named(NAME)
                .columns(
                        Column.text("subSystem", "Sub-system").atMost(24),
                        Column.whole("rows", "Rows"),
                        Column.money("own", "Parts and making", priced.currency()),
                        Column.money("coating", "Coating", priced.currency()),
                        Column.money("cost", "Cost", priced.currency()),
                        Column.percent("costShare", "Share of cost", 1),
                        Column.decimal("mass", "Mass", 2).in("kg"),
                        Column.percent("massShare", "Share of mass", 1),
                        Column.whole("lead", "Longest lead time").in("days"));
        Totals kit = priced.totals();
        priced.rowsBySubSystem().forEach((subSystem, items) -> {
            Totals some = priced.bySubSystem().getOrDefault(subSystem, Totals.NONE);
            RowBuilder row = table.row(subSystem).put("subSystem", subSystem);
            figures(row, items, some);
            share(row, "costShare", "cost", some.cost(), kit.cost());
            share(row, "massShare", "mass", some.massKg(), kit.massKg());
        });
        table.total("kit", "Kit")
                .sum("rows", BigDecimal.valueOf(priced.rows().size()))
                .sum("own", kit.own())
                .sum("coating", kit.coating())
                .sum("cost", kit.cost())
                .sum("mass", kit.massKg())
                .put("lead", priced.leadDays());
        return table;
    }

    private static void figures(RowBuilder row, List<PricedItem> items, Totals some) {
        String subSystem = items.get(0).subSystem();
        row.put("rows", items.size())
                .put("own", subtotal(subSystem, "extended"), some.own())
                .put("coating", subtotal(subSystem, "coating"), some.coating())
                .put("cost", sum(cell("own"), cell("coating")), some.cost())
                .put("mass", subtotal(subSystem, "massExtended"), some.massKg())
                .put(
                        "lead",
                        items.stream()
                                .mapToInt(item -> item.timing().startDays())
                                .max()
                                .orElse(0));
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
