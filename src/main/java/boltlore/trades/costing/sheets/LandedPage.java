package boltlore.trades.costing.sheets;

import boltlore.catalogue.Customs;
import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.LandedPart;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Bought parts with what they cost until they lie in the stores, by supplier. */
final class LandedPage {

    private static final int SHOWN_DECIMALS = 3;

    private LandedPage() {}

    static PageBuilder of(FullCost cost, String footer) {
        List<LandedPart> landed = cost.landed();
        long untold =
                landed.stream().filter(each -> each.part().customs() == null).count();
        PageBuilder page = Page.named("Landed cost")
                .landscape()
                .footer(footer)
                .title("Landed cost of bought parts")
                .add(table(landed, cost.priced().currency()));
        page.note(
                "Landed cost is price, freight, duty and clearance of what is issued, scrap with it. Duty is reckoned on "
                        + (cost.prices().landing().dutyOnFreight() ? "price and freight" : "the price")
                        + ". Duty rates are the workshop's own entries: look them up in the tariff before you rely on them.");
        return untold == 0
                ? page
                : page.note(untold + " of these parts have no customs data; no duty is reckoned on them.");
    }

    private static TableBuilder table(List<LandedPart> landed, Currency currency) {
        TableBuilder table = Table.named("landed").columns(columns(currency));
        bySupplier(landed).forEach((supplier, some) -> {
            table.group(supplier, supplier);
            some.forEach(part -> fill(table.row(), part));
            sums(table.subtotal(supplier), some, RowBuilder::sum);
        });
        sums(table.total("total", "All bought parts"), landed, RowBuilder::sumOfSubtotals);
        return table;
    }

    private static Column[] columns(Currency currency) {
        return new Column[] {
            Column.text("part", "Part"),
            Column.text("name", "Name").atMost(34),
            Column.quantity("issued", "Issued"),
            Column.text("unit", "Unit").atMost(6),
            Column.text("customs", "HS code, origin").atMost(14),
            Column.money("price", "Price", currency),
            Column.money("freight", "Freight", currency),
            Column.percent("duty-rate", "Duty", 1),
            Column.money("duty", "Duty", currency),
            Column.money("clearance", "Clearance", currency),
            Column.money("landed", "Landed", currency),
            Column.money("each", "Landed, each", currency)
        };
    }

    private static Map<String, List<LandedPart>> bySupplier(List<LandedPart> landed) {
        Map<String, List<LandedPart>> groups = new TreeMap<>();
        landed.forEach(part ->
                groups.computeIfAbsent(supplier(part), any -> new ArrayList<>()).add(part));
        return groups;
    }

    private static String supplier(LandedPart landed) {
        return landed.part().buying() == null
                ? "No supplier told"
                : landed.part().buying().supplier();
    }

    private static void fill(RowBuilder row, LandedPart landed) {
        Customs customs = landed.part().customs();
        row.put("part", landed.part().number().text())
                .put("name", landed.part().name().english())
                .put("issued", landed.issued().setScale(SHOWN_DECIMALS, RoundingMode.HALF_UP))
                .put("unit", landed.part().unit())
                .put("customs", customs == null ? "" : customs.hs() + ", " + customs.origin())
                .put("price", landed.price())
                .put("freight", landed.elements().of(Element.FREIGHT))
                .put("duty-rate", landed.dutyPercent())
                .put("duty", landed.elements().of(Element.DUTY))
                .put("clearance", landed.elements().of(Element.CLEARANCE))
                .put("landed", landed.landed())
                .put("each", landed.landed().divide(landed.issued(), MathContext.DECIMAL128));
    }

    /** How a row sums a column: over its group, or over all sub-totals. */
    private interface Summing {
        RowBuilder sum(RowBuilder row, String column, BigDecimal result);
    }

    private static void sums(RowBuilder row, List<LandedPart> some, Summing summing) {
        summing.sum(row, "price", sum(some, LandedPart::price));
        summing.sum(row, "freight", sum(some, each -> each.elements().of(Element.FREIGHT)));
        summing.sum(row, "duty", sum(some, each -> each.elements().of(Element.DUTY)));
        summing.sum(row, "clearance", sum(some, each -> each.elements().of(Element.CLEARANCE)));
        summing.sum(row, "landed", sum(some, LandedPart::landed));
    }

    private static BigDecimal sum(List<LandedPart> some, Function<LandedPart, BigDecimal> each) {
        return some.stream().map(each).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
