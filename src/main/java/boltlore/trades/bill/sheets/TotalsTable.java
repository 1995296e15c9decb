package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;
import static boltlore.report.Formula.sum;

import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.Totals;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Cost, mass and longest lead time by sub-system, taken from the sub-totals of the bill. */
final class TotalsTable {

    static final String NAME = "totals";

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final CostedBill costed;
    private final Totals kit;
    private final Map<String, Totals> sums;
    private final Map<String, List<ItemCost>> rows;

    private TotalsTable(CostedBill costed) {
        this.costed = costed;
        this.kit = costed.totals();
        this.sums = costed.bySubSystem();
        this.rows = costed.rowsBySubSystem();
    }

    static TableBuilder compose(CostedBill costed) {
        return new TotalsTable(costed).table();
    }

    private TableBuilder table() {
        TableSpec<String> spec = spec();
        TableBuilder table = spec.empty();
        rows.keySet().forEach(subSystem -> spec.add(table, subSystem, subSystem));
        table.total("kit", "Kit")
                .sum("rows", BigDecimal.valueOf(costed.rows().size()))
                .sum("partsAndManufacture", kit.own())
                .sum("coating", kit.coating())
                .sum("cost", kit.cost())
                .sum("mass", kit.massKg())
                .put("longestLead", costed.leadDays());
        return table;
    }

    private TableSpec<String> spec() {
        Currency currency = costed.currency();
        return TableSpec.<String>named(NAME)
                .text(
                        "subSystem",
                        "Sub-system",
                        24,
                        each -> costed.catalogue()
                                .subSystemSays(
                                        each, costed.catalogue().workshop().language()))
                .whole(
                        "rows",
                        "Rows in the file",
                        "",
                        subSystem -> items(subSystem).size())
                .column(
                        Column.money("partsAndManufacture", "Parts and manufacture", currency),
                        of("extended", Totals::own))
                .column(Column.money("coating", "Coating", currency), of("coating", Totals::coating))
                .column(
                        Column.money("cost", "Cost", currency),
                        subSystem -> Cell.of(
                                sum(cell("partsAndManufacture"), cell("coating")),
                                totals(subSystem).cost()))
                .column(Column.percent("costShare", "Share of cost", 1), share("cost", Totals::cost))
                .column(Column.decimal("mass", "Mass", 2).in("kg"), of("massExtended", Totals::massKg))
                .column(Column.percent("massShare", "Share of mass", 1), share("mass", Totals::massKg))
                .whole("longestLead", "Longest lead time", "days", subSystem -> leadDays(items(subSystem)));
    }

    private List<ItemCost> items(String subSystem) {
        return rows.getOrDefault(subSystem, List.of());
    }

    private Totals totals(String subSystem) {
        return sums.getOrDefault(subSystem, Totals.NONE);
    }

    private static int leadDays(List<ItemCost> items) {
        return items.stream().mapToInt(item -> item.timing().startDays()).max().orElse(0);
    }

    /** The sub-total of the bill's column. */
    private Function<String, Cell> of(String column, Function<Totals, BigDecimal> figure) {
        return subSystem ->
                Cell.of(cell(PageNames.BILL, "bill", "subtotal-" + subSystem, column), figure.apply(totals(subSystem)));
    }

    private Function<String, Cell> share(String of, Function<Totals, BigDecimal> figure) {
        BigDecimal whole = figure.apply(kit);
        Formula share = product(cell(of), fixed(HUNDRED)).over(cell(NAME, "kit", of));
        return subSystem -> whole.signum() <= 0
                ? Cell.EMPTY
                : Cell.of(
                        share.rounded(1),
                        figure.apply(totals(subSystem))
                                .multiply(HUNDRED)
                                .divide(whole, MathContext.DECIMAL128)
                                .setScale(1, RoundingMode.HALF_UP));
    }
}
