package boltlore.trades.bill.sheets;

import static boltlore.report.Formula.cell;
import static boltlore.report.Formula.fixed;
import static boltlore.report.Formula.product;

import boltlore.bill.Masses;
import boltlore.catalogue.Customs;
import boltlore.catalogue.Part;
import boltlore.explanation.ItemWords;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.Formula;
import boltlore.report.Kind;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.ItemCost;
import boltlore.trades.costing.MinorUnit;
import boltlore.trades.costing.Totals;
import boltlore.trades.picking.Alternates;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The costed bill as a table, grouped by sub-system, amounts as live formulas. */
final class BillTable {

    private static final Formula ONE = fixed(BigDecimal.ONE);
    private static final Formula HUNDRED = fixed(BigDecimal.valueOf(100));

    private final CostedBill costed;
    private final Currency currency;
    private final int coins;
    private final ItemWords words;
    private final TableSpec<ItemCost> spec = TableSpec.named("bill");

    private BillTable(CostedBill costed) {
        this.costed = costed;
        this.currency = costed.currency();
        this.coins = new MinorUnit(currency).digits();
        this.words = new ItemWords(costed.bill().order().choices().family(), language());
        what();
        figures();
        spec.besideThePaper();
        where();
        trade();
        if (costed.rows().stream()
                .anyMatch(row -> !part(row).upkeep().alternates().isEmpty())) {
            spec.text("or", "Or", 20, row -> Alternates.says(part(row), costed.catalogue()));
        }
    }

    static TableBuilder compose(CostedBill costed) {
        return new BillTable(costed).table();
    }

    private void what() {
        spec.text("part", "Part number", 11, row -> part(row).number().text())
                .text("revision", "Rev.", 4, row -> part(row).revision())
                .column(
                        Column.text("name", "Name").atMost(40),
                        row -> Cell.of(part(row).name(), indent(row.item().level()) + "{0}"))
                .quantity("quantity", "Qty", "", row -> row.item().quantity())
                .text("unit", "Unit", 5, row -> part(row).unit())
                .text("source", "Make, buy", 5, row -> word(part(row).source()));
    }

    private void figures() {
        int unitCost = new MinorUnit(currency).digits(costed.rows().stream().map(ItemCost::unitCost), 4);
        spec.column(
                        Column.decimal("massExtended", "Mass", 2).in("kg"),
                        row -> part(row).isAssembly()
                                ? Cell.EMPTY
                                : Cell.of(product(cell("quantity"), cell("massEach")), row.massKg()))
                .column(
                        new Column("unitCost", "Unit cost", Kind.money(currency, unitCost)),
                        row -> Cell.of(row.unitCost()))
                .column(
                        Column.money("extended", "Cost", currency),
                        row -> Cell.of(amount(row).rounded(coins), row.extended()))
                .money("coating", "Coating", currency, row -> row.item().coated() ? row.coating() : null);
    }

    private void where() {
        spec.whole("leadDays", "Lead days", "", row -> part(row).leadDays())
                .whole("level", "Level", "", row -> row.item().level())
                .said(
                        "position",
                        "Position",
                        Column.USUAL_WIDEST,
                        row -> row.item().position().says())
                .text(
                        "finish",
                        "Finish",
                        row -> costed.catalogue().finishSays(row.item().finish(), language()))
                .text("calledBy", "Needed by", row -> words.calledBy(row.item()));
    }

    private void trade() {
        spec.decimal("massEach", "Mass each", "kg", 3, row -> Masses.eachKg(part(row), costed.catalogue()::part))
                .percent("scrap", "Scrap", 1, row -> hasScrap(row) ? part(row).scrapPercent() : null)
                .text("hs", "HS code", 8, row -> customs(row, Customs::hs))
                .text("origin", "Origin", 5, row -> customs(row, Customs::origin))
                .text("tracked", "Track by", 6, row -> word(part(row).tracked()))
                .code("positionId", row -> row.item().position().name().text())
                .code("finishId", row -> row.item().finish())
                .code("subSystem", ItemCost::subSystem);
    }

    private static Part part(ItemCost row) {
        return row.item().part();
    }

    private static boolean hasScrap(ItemCost row) {
        return part(row).scrapPercent().signum() != 0;
    }

    private static Formula amount(ItemCost row) {
        Formula amount = product(cell("quantity"), cell("unitCost"));
        return hasScrap(row) ? amount.over(ONE.minus(cell("scrap").over(HUNDRED))) : amount;
    }

    private static @Nullable String customs(ItemCost row, Function<Customs, String> said) {
        Customs customs = part(row).customs();
        return customs == null ? null : said.apply(customs);
    }

    /** Parts stand to the right of what they are in. */
    private static String indent(int level) {
        return "· ".repeat(level - 1);
    }

    private static @Nullable String word(@Nullable Enum<?> name) {
        return name == null ? null : name.name().toLowerCase(Locale.ROOT);
    }

    private TableBuilder table() {
        TableBuilder table = spec.empty();
        Map<String, Totals> sums = costed.bySubSystem();
        costed.rowsBySubSystem().forEach((subSystem, items) -> {
            table.group(subSystem, costed.catalogue().subSystemSays(subSystem, language()));
            items.forEach(item -> spec.add(table, "", item));
            subtotal(
                    table,
                    OrderHead.sumOf(subSystem, costed.catalogue()),
                    items,
                    sums.getOrDefault(subSystem, Totals.NONE));
        });
        totals(table);
        return table;
    }

    private String language() {
        return costed.catalogue().workshop().language();
    }

    private static void subtotal(TableBuilder table, String sumOf, List<ItemCost> rows, Totals sum) {
        table.subtotal(sumOf + ", " + rows.size() + (rows.size() == 1 ? " row" : " rows"))
                .sum("massExtended", sum.massKg())
                .sum("extended", sum.own())
                .sum("coating", sum.coating());
    }

    private void totals(TableBuilder table) {
        Totals kit = costed.totals();
        source(table, "make", kit.made());
        source(table, "buy", kit.bought());
        table.total("kit", "Kit")
                .sumOfSubtotals("massExtended", kit.massKg())
                .sumOfSubtotals("extended", kit.own())
                .sumOfSubtotals("coating", kit.coating());
    }

    private static void source(TableBuilder table, String source, BigDecimal cost) {
        table.subtotal("sum-" + source, "All that the workshop will")
                .put("source", source)
                .put("extended", Formula.sumWhere("extended", "source"), cost);
    }
}
