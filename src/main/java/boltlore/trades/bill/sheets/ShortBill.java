package boltlore.trades.bill.sheets;

import boltlore.bill.Origin;
import boltlore.catalogue.Part;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Kind;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Totals;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * The costed bill as it is printed: what is bought for others of a sub-system, bolts above all, stands once, added up,
 * after what is there by itself. Position by position it stands in {@link BillTable}.
 */
final class ShortBill {

    /** Rows of the bill that are one on paper. */
    private record Line(List<ItemCost> rows) {

        ItemCost first() {
            return rows.get(0);
        }

        Part part() {
            return first().item().part();
        }

        BigDecimal sum(Function<ItemCost, BigDecimal> of) {
            return rows.stream().map(of).reduce(BigDecimal.ZERO, BigDecimal::add);
        }
    }

    private final CostedBill costed;
    private final TableSpec<Line> spec;

    private ShortBill(CostedBill costed) {
        this.costed = costed;
        Currency currency = costed.currency();
        int unitCost = new MinorUnit(currency).digits(costed.rows().stream().map(ItemCost::unitCost), 4);
        this.spec = TableSpec.<Line>named("bill-in-short")
                .text("part", "Part number", 11, line -> line.part().number().text())
                .text("revision", "Rev.", 4, line -> line.part().revision())
                .column(Column.text("name", "Name").atMost(54), ShortBill::name)
                .quantity(
                        "quantity",
                        "Qty",
                        "",
                        line -> line.sum(row -> row.item().quantity()))
                .text("unit", "Unit", 5, line -> line.part().unit())
                .text(
                        "source",
                        "Make, buy",
                        5,
                        line -> line.part().source().name().toLowerCase(Locale.ROOT))
                .decimal("mass", "Mass", "kg", 2, line -> line.part().isAssembly() ? null : line.sum(ItemCost::massKg))
                .column(
                        new Column("unitCost", "Unit cost", Kind.money(currency, unitCost)),
                        line -> Cell.of(line.first().unitCost()))
                .money("cost", "Cost", currency, line -> line.sum(ItemCost::extended))
                .money(
                        "coating",
                        "Coating",
                        currency,
                        line -> line.first().item().coated() ? line.sum(ItemCost::coating) : null);
    }

    static TableBuilder compose(CostedBill costed) {
        return new ShortBill(costed).table();
    }

    /** Parts stand to the right of what they are in. */
    private static Cell name(Line line) {
        int inside = isAdded(line.first()) ? 0 : line.first().item().level() - 1;
        return Cell.of(line.part().name(), "· ".repeat(inside) + "{0}");
    }

    private TableBuilder table() {
        TableBuilder table = spec.empty();
        Map<String, Totals> sums = costed.bySubSystem();
        costed.rowsBySubSystem().forEach((subSystem, rows) -> {
            table.group(
                    subSystem,
                    costed.catalogue()
                            .subSystemSays(
                                    subSystem, costed.catalogue().workshop().language()));
            lines(rows).forEach(line -> spec.add(table, "", line));
            Totals sum = sums.getOrDefault(subSystem, Totals.NONE);
            table.subtotal(OrderHead.sumOf(subSystem, costed.catalogue()))
                    .sum("mass", sum.massKg())
                    .sum("cost", sum.own())
                    .sum("coating", sum.coating());
        });
        Totals kit = costed.totals();
        table.total("kit", "Kit")
                .sumOfSubtotals("mass", kit.massKg())
                .sumOfSubtotals("cost", kit.own())
                .sumOfSubtotals("coating", kit.coating());
        return table;
    }

    private static List<Line> lines(List<ItemCost> rows) {
        List<Line> lines = new ArrayList<>();
        Map<List<Object>, List<ItemCost>> added = new LinkedHashMap<>();
        for (ItemCost row : rows) {
            if (isAdded(row)) {
                added.computeIfAbsent(
                                List.of(
                                        row.item().part().number(),
                                        row.insideBought(),
                                        row.item().finish()),
                                none -> new ArrayList<>())
                        .add(row);
            } else {
                lines.add(new Line(List.of(row)));
            }
        }
        added.values().forEach(some -> lines.add(new Line(some)));
        return lines;
    }

    /** What is bought because something else asks for it or is made of it. */
    private static boolean isAdded(ItemCost row) {
        boolean own = row.item().origin() instanceof Origin.OwnLine;
        return !own && !row.insideBought() && !row.made() && row.item().inside().isEmpty();
    }
}
