package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.answers.OrderKit;
import boltlore.asking.KitFigures;
import boltlore.demo.Demo;
import boltlore.faults.Outcome;
import boltlore.report.Cell;
import boltlore.report.Page;
import boltlore.report.Particular;
import boltlore.report.Report;
import boltlore.report.Row;
import boltlore.report.Table;
import boltlore.resolution.OrderResolver;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.trades.KitInWork;
import boltlore.trades.TradeResult;
import boltlore.trades.costing.quote.OrderPricing;
import boltlore.trades.costing.quote.QuoteRequest;
import boltlore.trades.orders.KitTrades;
import boltlore.trades.orders.OrderSheets;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every place that tells the price, the lead time or an order-by date of a demo order, compared to the cent and the day. */
@DisplayName("An order has one price and one set of dates:")
class OnePriceTest {

    private static final Path ORDERS = Path.of("catalog", "orders");
    private static final Resolver RESOLVER = new RuleResolver(Demo.catalogue());

    @TempDir
    Path folder;

    /** Those that are decided and that nothing stops. */
    static Stream<OrderKit> kits() throws IOException {
        try (Stream<Path> files = Files.list(ORDERS)) {
            return files
                    .map(file -> file.getFileName().toString().replace(".json", ""))
                    .filter(name -> name.matches("bl-\\d+"))
                    .sorted()
                    .map(OnePriceTest::kit)
                    .filter(OrderKit::issuesSheets)
                    .toList()
                    .stream();
        }
    }

    private static OrderKit kit(String name) {
        return ((Outcome.Sound<OrderKit>) OrderKit.of(new OrderResolver(RESOLVER), Demo.order(name), false)).value();
    }

    private static Path file(OrderKit kit) {
        return ORDERS.resolve(kit.order().name().toLowerCase(Locale.ROOT) + ".json");
    }

    @ParameterizedTest
    @MethodSource("kits")
    @DisplayName("kit, price, choose and ask say the same")
    void on_the_screen(OrderKit kit) {
        OrderPricing pricing = pricing(kit);
        String price = KitFigures.price(pricing);
        String both = price + ", lead time " + pricing.leadDays() + " days";

        assertThat(price).contains(" before tax");
        assertThat(words(Ran.boltlore("kit", file(kit), "--out", folder.resolve("kit"))))
                .contains(both);
        assertThat(words(Ran.boltlore("price", file(kit), "--out", folder.resolve("price"))))
                .contains("The kit ships after " + pricing.leadDays() + " days");
        assertThat(words(Ran.boltlore("choose", file(kit), "--cheapest"))).contains(both);
        assertThat(words(Ran.boltlore("choose", file(kit), "--within", "60s"))).contains(capital(price) + "; 1 valid");
        assertThat(words(asked(file(kit)))).contains(capital(price));
    }

    private Ran asked(Path order) {
        InputStream terminal = System.in;
        System.setIn(new ByteArrayInputStream("write\n".getBytes(StandardCharsets.UTF_8)));
        try {
            return Ran.boltlore("ask", order, "--out", folder.resolve("asked.json"), "--within", "60s");
        } finally {
            System.setIn(terminal);
        }
    }

    @ParameterizedTest
    @MethodSource("kits")
    @DisplayName("bill, cost statement, quotation and customs lines say the same")
    void on_the_sheets(OrderKit kit) {
        OrderPricing pricing = pricing(kit);
        BigDecimal net = pricing.quotation().orElseThrow().net();
        Map<String, Report> books = books(kit, pricing);

        assertThat(figure(particular(books.get("bill").page("Bill"), "net"))).isEqualByComparingTo(net);
        assertThat(figure(cell(table(books.get("quotation"), "price"), "net", "amount")))
                .isEqualByComparingTo(net);
        // Only what passes customs has an invoice for them.
        Optional.ofNullable(books.get("pro-forma-invoice"))
                .ifPresent(invoice -> assertThat(figure(cell(table(invoice, "customs-lines"), "total", "value")))
                        .isEqualByComparingTo(net));
        Table steps = table(books.get("cost-statement"), "price");
        assertThat(steps.rows().stream()
                        .filter(row -> text(row, steps, "step").equals("Price before tax"))
                        .map(row -> figure(row.cells().get(steps.column("quoted")))))
                .hasSize(1)
                .allSatisfy(quoted -> assertThat(quoted).isEqualByComparingTo(net));
    }

    @ParameterizedTest
    @MethodSource("kits")
    @DisplayName("what is near-critical on the cost statement is not said in the table above it again")
    void beyond(OrderKit kit) {
        Report statement = books(kit, pricing(kit)).get("cost-statement");

        assertThat(table(statement, "near-critical").rows())
                .extracting(Row::cells)
                .doesNotContainAnyElementsOf(table(statement, "order-first").rows().stream()
                        .map(Row::cells)
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("kits")
    @DisplayName("what the cost statement starts first is ordered or released on the bill by the same day")
    void dates(OrderKit kit) {
        Map<String, Report> books = books(kit, pricing(kit));
        Map<String, LocalDate> onBill = new HashMap<>();
        onBill.putAll(days(table(books.get("bill"), "buy"), "orderBy"));
        onBill.putAll(days(table(books.get("bill"), "make"), "release"));

        Map<String, LocalDate> first = days(table(books.get("cost-statement"), "order-first"), "start");

        assertThat(first).hasSizeGreaterThan(5);
        assertThat(onBill).containsAllEntriesOf(first);
        assertThat(onBill.values())
                .allSatisfy(day -> assertThat(day)
                        .isAfterOrEqualTo(
                                kit.order().due().minusDays(pricing(kit).leadDays())));
    }

    private static OrderPricing pricing(OrderKit kit) {
        return OrderPricing.of(kit.bill(), Demo.catalogue(), QuoteRequest.usual(kit.order(), LocalDate.of(2026, 3, 2)));
    }

    private static Map<String, Report> books(OrderKit kit, OrderPricing pricing) {
        var plan = RESOLVER.plan(kit.order().family());
        KitInWork inWork = new KitInWork(plan, kit.bill(), LocalDate.of(2026, 3, 2));
        Stream<Supplier<Report>> all = Stream.concat(
                OrderSheets.prepare(inWork, pricing, new KitTrades(List.of(), Map.of()), false).stream(),
                KitTrades.of(inWork, kit.misfits()).results().values().stream()
                        .flatMap(List::stream)
                        .flatMap(result -> result.sheets().stream())
                        .map(TradeResult.Sheet::report));
        Map<String, Report> books = new HashMap<>();
        all.map(Supplier::get).forEach(report -> books.put(report.file(), report));
        return books;
    }

    private static Cell particular(Page page, String key) {
        return page.particulars()
                .flatMap(block -> block.entries().stream())
                .filter(entry -> entry.key().equals(key))
                .map(Particular::cell)
                .findFirst()
                .orElseThrow();
    }

    private static Table table(Report report, String name) {
        return report.pages().stream()
                .flatMap(Page::tables)
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Cell cell(Table table, String row, String column) {
        return table.rows().get(table.row(row)).cells().get(table.column(column));
    }

    private static BigDecimal figure(Cell cell) {
        return cell instanceof Cell.Worked worked ? worked.result() : ((Cell.Figure) cell).value();
    }

    private static String text(Row row, Table table, String column) {
        return row.cells().get(table.column(column)) instanceof Cell.Words words ? words.text() : "";
    }

    private static Map<String, LocalDate> days(Table table, String column) {
        Map<String, LocalDate> days = new HashMap<>();
        for (Row row : table.rows()) {
            if (row.isPlain() && row.cells().get(table.column(column)) instanceof Cell.Day day) {
                days.put(text(row, table, "part"), day.value());
            }
        }
        return days;
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String words(Ran ran) {
        return ran.out().replaceAll("\\s+", " ");
    }
}
