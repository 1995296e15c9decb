package boltlore.trades.costing.sheets;

import boltlore.measure.PartNumber;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.RowBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.trades.costing.cost.Bridge;
import boltlore.trades.costing.cost.Element;
import boltlore.trades.costing.cost.Elements;
import boltlore.trades.costing.cost.FullCost;
import boltlore.trades.costing.cost.Work;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The full cost taken apart: against the costed bill, by sub-system, by operation, by made part. */
final class CostTables {

    private static final List<Element> OF_MADE_PARTS = List.of(
            Element.MATERIAL,
            Element.SCRAP,
            Element.LABOUR,
            Element.SET_UP,
            Element.OWN_COATING,
            Element.OUTSIDE_WORK,
            Element.OVERHEAD);

    /** Assembly, test and packing of the kit, and its crates: one column beside the elements of parts. */
    private static final List<Element> OF_WHOLE_KIT =
            List.of(Element.KIT_ASSEMBLY, Element.KIT_TEST, Element.KIT_PACKING, Element.CRATES);

    private final FullCost cost;
    private final Currency currency;
    private final String footer;

    CostTables(FullCost cost, String footer) {
        this.cost = cost;
        this.currency = cost.costed().currency();
        this.footer = footer;
    }

    /** How the full cost stands to the direct cost of the costed bill, so that nobody takes one for the other. */
    void reconciliation(PageBuilder page) {
        Bridge bridge = Bridge.of(cost);
        TableBuilder table = TableSpec.<Map.Entry<String, BigDecimal>>named("reconciliation")
                .text("what", "What", 70, Map.Entry::getKey)
                .money("amount", "Amount", currency, Map.Entry::getValue)
                .of(List.of(
                        Map.entry("Direct cost, as on the costed bill", bridge.direct()),
                        Map.entry(
                                "Labour that the part master's costs of made parts hold",
                                bridge.held().negate()),
                        Map.entry("Labour, set-up and outside operations at their own rates", bridge.work()),
                        Map.entry("Assembly, test and packing of the kit, and its crates", bridge.kitWork()),
                        Map.entry("Freight, duty and clearance", bridge.delivery()),
                        Map.entry("Overhead", bridge.overhead())));
        table.total("total", "Full cost of the kit").sum("amount", bridge.full());
        page.heading("Full cost beside the costed bill")
                .add(table)
                .note(
                        "The costed bill adds up direct cost: bought parts, made parts at the part master's cost, coating. Full"
                                + " cost takes out the labour that those costs hold and puts in labour by operation, work on the kit"
                                + " as a whole, delivery and overhead. Every price rests on the full cost.");
    }

    /** An element that costs nothing has no column. */
    PageBuilder subSystems() {
        List<Element> elements = Arrays.stream(Element.values())
                .filter(element -> cost.kit().of(element).signum() != 0)
                .filter(element -> !OF_WHOLE_KIT.contains(element))
                .toList();
        TableSpec<Map.Entry<String, Elements>> spec = TableSpec.<Map.Entry<String, Elements>>named("sub-systems")
                .text(
                        "sub-system",
                        "Sub-system",
                        row -> cost.costed()
                                .catalogue()
                                .subSystemSays(
                                        row.getKey(),
                                        cost.costed().catalogue().workshop().language()));
        TableBuilder table = elements(
                        spec.money("kit-work", "Kit as a whole", currency, row -> orEmpty(ofWholeKit(row.getValue()))),
                        elements,
                        Map.Entry::getValue)
                .of(bySubSystem());
        total(table, "The kit", elements, cost.kit()).sum("kit-work", ofWholeKit(cost.kit()));
        return Page.named("Sub-systems")
                .landscape()
                .footer(footer)
                .title("Full cost by sub-system")
                .add(table);
    }

    /** What is done with the kit as a whole belongs to no sub-system. */
    private List<Map.Entry<String, Elements>> bySubSystem() {
        List<Map.Entry<String, Elements>> rows =
                new ArrayList<>(cost.bySubSystem().entrySet());
        if (cost.ofTasks().total().signum() != 0) {
            rows.add(Map.entry("the whole kit", cost.ofTasks()));
        }
        return rows;
    }

    void work(PageBuilder page) {
        List<Work> all = cost.work();
        TableBuilder table = TableSpec.<Work>named("work")
                .text("operation", "Operation", work -> work.rate().operation())
                .text("who", "Where", 12, work -> work.rate().outside() ? "outside" : "our own")
                .money("rate", "Rate per hour", currency, work -> work.rate().perHour())
                .decimal("set-up-time", "Set-up", "min", 1, Work::setUpMin)
                .decimal("run-time", "Run", "min", 1, Work::runMin)
                .money("set-up", "Set-up", currency, Work::setUp)
                .money("run", "Run", currency, Work::run)
                .of(all);
        table.total("total", "All work")
                .sum("set-up-time", sum(all, Work::setUpMin))
                .sum("run-time", sum(all, Work::runMin))
                .sum("set-up", sum(all, Work::setUp))
                .sum("run", sum(all, Work::run));
        page.heading("Work by operation")
                .add(table)
                .note("Set-up minutes are the kit's share: a lot's set-up divided by the pieces of the lot, "
                        + cost.prices().lots().usual()
                        + " where a part has no lot of its own. Minutes count what is issued, scrap with it.");
    }

    /** Below what is printed. What is inside an assembly has its own row or is bought. */
    TableBuilder madeParts() {
        Map<PartNumber, BigDecimal> quantities =
                cost.costed().bill().resolved().kit().quantities();
        TableSpec<Map.Entry<PartNumber, Elements>> spec = TableSpec.<Map.Entry<PartNumber, Elements>>named("made")
                .text("part", "Part", made -> made.getKey().text())
                .said(
                        "name",
                        "Name",
                        34,
                        made -> cost.costed().catalogue().part(made.getKey()).name())
                .quantity("quantity", "Quantity", "", made -> quantities.getOrDefault(made.getKey(), BigDecimal.ZERO));
        Elements all = Elements.sum(cost.made().values());
        List<Element> elements = OF_MADE_PARTS.stream()
                .filter(element -> all.of(element).signum() != 0)
                .toList();
        TableBuilder table =
                elements(spec, elements, Map.Entry::getValue).of(cost.made().entrySet());
        total(table, "All made parts", elements, all);
        return table.belowThePaper();
    }

    private <R> TableSpec<R> elements(TableSpec<R> spec, List<Element> elements, Function<R, Elements> of) {
        elements.forEach(
                element -> spec.money(key(element), element.says(), currency, row -> orEmpty(of.apply(row), element)));
        return spec.money("total", "Full cost", currency, row -> of.apply(row).total());
    }

    /** Nothing where it costs nothing. */
    static @Nullable BigDecimal orEmpty(Elements elements, Element element) {
        return orEmpty(elements.of(element));
    }

    private static @Nullable BigDecimal orEmpty(BigDecimal amount) {
        return amount.signum() == 0 ? null : amount;
    }

    private static BigDecimal ofWholeKit(Elements elements) {
        return OF_WHOLE_KIT.stream().map(elements::of).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static RowBuilder total(TableBuilder table, String words, List<Element> elements, Elements all) {
        RowBuilder total = table.total("total", words);
        elements.forEach(element -> total.sum(key(element), all.of(element)));
        return total.sum("total", all.total());
    }

    private static String key(Element element) {
        return element.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static BigDecimal sum(List<Work> all, Function<Work, BigDecimal> each) {
        return all.stream().map(each).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
