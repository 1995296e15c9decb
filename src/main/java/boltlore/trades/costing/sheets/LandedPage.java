package boltlore.trades.costing.sheets;

import boltlore.catalogue.Customs;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
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
import org.jspecify.annotations.Nullable;

/** What bought parts cost until they lie in the stores, by supplier, and part by part below what is printed. */
final class LandedPage {

    private static final int SHOWN_DECIMALS = 3;

    private LandedPage() {}

    /** By supplier; part by part they stand in {@link #parts}. */
    static PageBuilder add(FullCost cost, PageBuilder page) {
        List<LandedPart> landed = cost.landed();
        long untold =
                landed.stream().filter(each -> each.part().customs() == null).count();
        page.heading("Landed cost of bought parts, by supplier")
                .add(suppliers(landed, cost.costed().currency()));
        page.note(
                "Landed cost is price, freight, duty and clearance of what is issued, scrap with it. Duty is calculated on "
                        + (cost.prices().landing().dutyOnFreight() ? "price and freight" : "the price")
                        + ". Duty rates are the workshop's own entries: look them up in the tariff before you rely on them.");
        return untold == 0
                ? page
                : page.note(untold + " of these parts have no customs data; no duty is calculated on them.");
    }

    private static TableBuilder suppliers(List<LandedPart> landed, Currency currency) {
        TableBuilder table = TableSpec.<Map.Entry<String, List<LandedPart>>>named("landed-by-supplier")
                .text("supplier", "Supplier", 34, Map.Entry::getKey)
                .whole("parts", "Parts", "", some -> some.getValue().size())
                .money("price", "Price", currency, some -> sum(some.getValue(), LandedPart::price))
                .money("freight", "Freight", currency, some -> sum(some, Element.FREIGHT))
                .money("duty", "Duty", currency, some -> sum(some, Element.DUTY))
                .money("clearance", "Clearance", currency, some -> sum(some, Element.CLEARANCE))
                .money("landed", "Landed", currency, some -> sum(some.getValue(), LandedPart::landed))
                .of(bySupplier(landed).entrySet());
        sums(table.total("total", "All suppliers"), landed, RowBuilder::sum);
        return table;
    }

    /** Each bought part, by supplier, below what is printed. */
    static TableBuilder parts(FullCost cost) {
        List<LandedPart> landed = cost.landed();
        TableSpec<LandedPart> spec = spec(cost.costed().currency());
        TableBuilder table = spec.empty().belowThePaper();
        bySupplier(landed).forEach((supplier, some) -> {
            table.group(supplier, supplier);
            some.forEach(part -> spec.add(table, "", part));
            sums(table.subtotal(supplier), some, RowBuilder::sum);
        });
        sums(table.total("total", "All bought parts"), landed, RowBuilder::sumOfSubtotals);
        return table;
    }

    private static TableSpec<LandedPart> spec(Currency currency) {
        return TableSpec.<LandedPart>named("landed")
                .text("part", "Part", each -> each.part().number().text())
                .said("name", "Name", 48, each -> each.part().name())
                .quantity("issued", "Issued", "", each -> each.issued().setScale(SHOWN_DECIMALS, RoundingMode.HALF_UP))
                .text("unit", "Unit", 6, each -> each.part().unit())
                .money("price", "Price", currency, LandedPart::price)
                .money("freight", "Freight", currency, each -> CostTables.orEmpty(each.elements(), Element.FREIGHT))
                .money("duty", "Duty", currency, each -> CostTables.orEmpty(each.elements(), Element.DUTY))
                .money(
                        "clearance",
                        "Clearance",
                        currency,
                        each -> CostTables.orEmpty(each.elements(), Element.CLEARANCE))
                .money("landed", "Landed", currency, LandedPart::landed)
                .besideThePaper()
                .text(
                        "customs",
                        "HS code, origin",
                        14,
                        each -> customs(each.part().customs()))
                .percent("duty-rate", "Duty rate", 1, LandedPart::dutyPercent)
                .money(
                        "each",
                        "Landed, each",
                        currency,
                        each -> each.landed().divide(each.issued(), MathContext.DECIMAL128));
    }

    private static @Nullable String customs(@Nullable Customs customs) {
        return customs == null ? null : customs.hs() + ", " + customs.origin();
    }

    private static Map<String, List<LandedPart>> bySupplier(List<LandedPart> landed) {
        Map<String, List<LandedPart>> groups = new TreeMap<>();
        landed.forEach(part ->
                groups.computeIfAbsent(supplier(part), any -> new ArrayList<>()).add(part));
        return groups;
    }

    private static String supplier(LandedPart landed) {
        return landed.part().buying() == null
                ? "No supplier"
                : landed.part().buying().supplier();
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

    private static BigDecimal sum(Map.Entry<String, List<LandedPart>> supplier, Element element) {
        return sum(supplier.getValue(), each -> each.elements().of(element));
    }

    private static BigDecimal sum(List<LandedPart> some, Function<LandedPart, BigDecimal> each) {
        return some.stream().map(each).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
