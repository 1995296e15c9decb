package boltlore.trades.buying;

import boltlore.catalogue.Buying;
import boltlore.catalogue.Part;
import boltlore.findings.Findings;
import boltlore.measure.Money;
import boltlore.netting.ItemPlan;
import boltlore.netting.PlannedReceipt;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.FindingsTable;
import boltlore.report.Heading;
import boltlore.report.Kind;
import boltlore.report.Look;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Particulars;
import boltlore.report.ParticularsBuilder;
import boltlore.report.Report;
import boltlore.report.ReportBuilder;
import boltlore.report.TableBuilder;
import boltlore.report.TableSpec;
import boltlore.report.Words;
import boltlore.trades.buying.ShopPlan.Asking;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The purchase list of all orders, by supplier; what to make and to coat; what to ask for sooner. */
final class BuyingReport {

    private static final String DATES =
            "Dates are calendar days. 'Late' counts the days since the last one on which it would have"
                    + " come in time. 'For' names the orders that ask, each with its quantity; 'stock' is what the pack, the least"
                    + " order or a safety stock adds.";

    private final ShopPlan plan;
    private final BigDecimal apart;
    private final Currency home;

    private BuyingReport(ShopPlan plan, BigDecimal apart) {
        this.plan = plan;
        this.apart = apart;
        this.home = plan.catalogue().workshop().currency();
    }

    static Report compose(ShopPlan plan, BigDecimal apart, Findings findings) {
        return new BuyingReport(plan, apart).report(findings);
    }

    private Report report(Findings findings) {
        int count = plan.orders().size();
        String about = count == 1 ? "1 order" : count + " orders";
        ReportBuilder report = Report.named("purchase-list", "Purchase list")
                .about(about)
                .by(plan.catalogue().workshop().name())
                .in(words())
                .dated(plan.stores().today())
                .found(findings)
                .glance(new Heading("Purchase list for " + about, Look.TITLE))
                .glance(suppliers().build())
                .glance(sums().build());
        report.page(overview(findings));
        report.page(page("To buy", "To buy", true).add(toBuy()).note(DATES).frozen(2));
        if (!plan.toHurry().isEmpty()) {
            report.page(page("Sooner", "To ask for sooner", false).add(sooner()));
        }
        if (!plan.toMake().isEmpty()) {
            report.page(page("To make", "To make", true)
                    .add(made("make", plan.toMake(), "Begin by"))
                    .note(DATES));
        }
        if (!plan.toCoat().isEmpty()) {
            report.page(page("To coat", "To coat", true)
                    .add(made("coat", plan.toCoat(), "Bring by"))
                    .note(DATES));
        }
        return report.build();
    }

    private PageBuilder page(String name, String title, boolean landscape) {
        PageBuilder page =
                Page.named(name).footer("Purchase list, " + plan.stores().today());
        return (landscape ? page.landscape() : page).title(title);
    }

    private PageBuilder overview(Findings findings) {
        PageBuilder page = page("Overview", "Purchase list", false)
                .add(head())
                .add(orders())
                .add(suppliers());
        FindingsTable.add(page, findings, plan.catalogue().workshop().language());
        return page;
    }

    private ParticularsBuilder head() {
        return costs(Particulars.named("purchase-head")
                .say("day", "Planned from", plan.stores().today()));
    }

    private ParticularsBuilder sums() {
        return costs(Particulars.named("purchase-sums"));
    }

    private ParticularsBuilder costs(ParticularsBuilder says) {
        return says.say("together", "Cost, bought together", Kind.money(home, Money.digits(home)), plan.together())
                .say(
                        "apart",
                        "Cost, each order by itself with nothing in stock",
                        Kind.money(home, Money.digits(home)),
                        apart)
                .say("saved", "Saved", Kind.money(home, Money.digits(home)), apart.subtract(plan.together()));
    }

    private TableBuilder orders() {
        return TableSpec.<Asking>named("orders")
                .text("order", "Order", Asking::order)
                .text("customer", "Customer", 30, Asking::customer)
                .date("due", "Due", Asking::due)
                .whole("parts", "Parts still to get", "", Asking::parts)
                .of(plan.orders());
    }

    private TableBuilder suppliers() {
        Map<String, List<PurchaseLine>> bySupplier = bySupplier();
        return TableSpec.<Map.Entry<String, List<PurchaseLine>>>named("suppliers")
                .text("supplier", "Supplier", 30, Map.Entry::getKey)
                .whole("parts", "Parts", "", each -> parts(each.getValue().stream()))
                .money("cost", "Cost", home, each -> sum(each.getValue()))
                .date(
                        "orderBy",
                        "Order first by",
                        each -> each.getValue().get(0).orderBy())
                .whole(
                        "late",
                        "Parts late",
                        "",
                        each -> told(parts(each.getValue().stream().filter(line -> line.lateDays() > 0))))
                .of(bySupplier.entrySet());
    }

    /** A part that is needed on several days is one line of the purchase order. */
    private static int parts(Stream<PurchaseLine> lines) {
        return (int) lines.map(line -> line.part().number()).distinct().count();
    }

    private Map<String, List<PurchaseLine>> bySupplier() {
        return plan.purchases().stream()
                .collect(Collectors.groupingBy(PurchaseLine::supplier, LinkedHashMap::new, Collectors.toList()));
    }

    private static BigDecimal sum(List<PurchaseLine> lines) {
        return lines.stream().map(PurchaseLine::homeCost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private TableBuilder toBuy() {
        TableSpec<PurchaseLine> spec = TableSpec.<PurchaseLine>named("buy")
                .date("orderBy", "Order by", PurchaseLine::orderBy)
                .whole("late", "Late", "days", line -> told(line.lateDays()))
                .text("supplierPart", "Supplier part no.", 14, PurchaseLine::orderCode)
                .text("part", "Part number", 12, line -> line.part().number().text())
                .text("revision", "Rev.", 4, line -> line.part().revision())
                .said("name", "Name", 34, line -> line.part().name())
                .quantity("quantity", "To order", "", PurchaseLine::quantity)
                .text("unit", "Unit", 5, line -> line.part().unit())
                .quantity("pack", "Pack of", "", line -> bought(line.part(), Buying::packOf))
                .text(
                        "price",
                        "Price of one",
                        14,
                        line -> line.currency() + " " + line.unitCost().toPlainString())
                .column(Column.money("cost", "Cost", home), line -> Cell.of(line.homeCost()))
                .date("needed", "Needed", PurchaseLine::neededOn)
                .text("for", "For", 34, line -> forWhom(line.receipt()))
                .text("sooner", "Sooner from", 24, line -> line.lateDays() == 0 ? null : sooner(line))
                .box(Column.tick("ordered", "Ordered"));
        TableBuilder table = spec.empty();
        bySupplier().forEach((supplier, lines) -> {
            table.group(supplier, supplier.isEmpty() ? "No supplier" : supplier);
            lines.forEach(line -> spec.add(table, "", line));
            table.subtotal("To " + supplier).sum("cost", sum(lines));
        });
        table.total("all", "All suppliers").sumOfSubtotals("cost", plan.together());
        return table;
    }

    private static @Nullable String sooner(PurchaseLine line) {
        return line.sooner()
                .map(offer -> offer.supplier() + ", " + offer.leadDays() + " days")
                .orElse(null);
    }

    private static @Nullable BigDecimal bought(Part part, Function<Buying, @Nullable BigDecimal> number) {
        Buying buying = part.buying();
        return buying == null ? null : number.apply(buying);
    }

    private static @Nullable Integer told(int number) {
        return number == 0 ? null : number;
    }

    private TableBuilder made(String name, List<PlannedReceipt> receipts, String beginBy) {
        int now = plan.netting().now();
        return TableSpec.<PlannedReceipt>named(name)
                .date("release", beginBy, receipt -> StoresNow.date(receipt.release()))
                .whole("late", "Late", "days", receipt -> told(receipt.lateBy(now)))
                .text(
                        "part",
                        "Part number",
                        14,
                        receipt -> receipt.item().part().text())
                .text("revision", "Rev.", 4, receipt -> plan.part(receipt).revision())
                .said("name", "Name", 40, receipt -> plan.part(receipt).name())
                .text("finish", "Finish", 20, receipt -> finish(receipt))
                .quantity("quantity", "Quantity", "", PlannedReceipt::quantity)
                .text("unit", "Unit", 5, receipt -> plan.part(receipt).unit())
                .date("needed", "Ready by", receipt -> StoresNow.date(receipt.due()))
                .text("for", "For", 40, receipt -> forWhom(receipt))
                .of(receipts);
    }

    private Words words() {
        return Words.of(plan.catalogue().workshop().language(), BuyingReport.class);
    }

    private String forWhom(PlannedReceipt receipt) {
        return PurchaseLine.says(plan.netting().askedBy(receipt), words()::number);
    }

    private @Nullable String finish(PlannedReceipt receipt) {
        String finish = receipt.item().finish();
        return finish.isEmpty()
                ? null
                : plan.catalogue()
                        .finishSays(finish, plan.catalogue().workshop().language());
    }

    private TableBuilder sooner() {
        record Row(ItemPlan item, ItemPlan.Brought brought) {}
        return TableSpec.<Row>named("sooner")
                .text("receipt", "Order", row -> row.brought().receipt().name())
                .text("part", "Part number", row -> row.item().item().toString())
                .quantity("quantity", "Quantity", "", row -> row.brought().quantity())
                .date(
                        "expected",
                        "Expected",
                        row -> date(row.brought().receipt().period()))
                .date("needed", "Needed", row -> date(row.brought().wanted()))
                .of(plan.toHurry().stream()
                        .flatMap(item -> item.brought().stream().map(brought -> new Row(item, brought)))
                        .toList());
    }

    private static LocalDate date(int day) {
        return StoresNow.date(day);
    }
}
