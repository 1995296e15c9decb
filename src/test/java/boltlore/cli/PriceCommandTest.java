package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's orders priced, and what workshop and customer get of it. */
class PriceCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String PARTNERS = "catalog/orders/bl-1010.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private JsonNode json(Object... arguments) throws IOException {
        return new ObjectMapper().readTree(boltlore(arguments).out());
    }

    private static BigDecimal number(JsonNode node, String key) {
        return new BigDecimal(node.get(key).asText());
    }

    @Test
    void tells_cost_price_and_lead_time_and_writes_two_workbooks_for_each_order() {
        Ran ran = boltlore("price", FIRST, PARTNERS, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Full cost ")
                .contains("Total due ")
                .contains("The kit ships after 55 days: order and receive DU-90")
                .contains("Half the duration of DU-90 would save 4 days.")
                .contains("Margin EUR 9,771.34 (22.0 %), after discount and rounding")
                .contains("Send out only the folder 'customer'")
                .contains("4 sheets written to ");
        assertThat(out().resolve("BL-1001/customer/quotation.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/workshop/cost-statement.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/workshop/cost-bars.svg")).content().startsWith("<svg");
        assertThat(out().resolve("BL-1010/customer/json/quotation.json")).isRegularFile();
    }

    /** An oven of 300 mm takes no cradle: price and days are those of the coater for what is too large. */
    @Test
    void a_smaller_oven_is_paid_for_and_waited_for() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder,
                "workshop/coating.json",
                "\"length\": 2600, \"width\": 1400, \"height\": 1600",
                "\"length\": 300, \"width\": 300, \"height\": 300");
        JsonNode before =
                json("price", FIRST, "--json", "--out", out()).get("orders").get(0);
        JsonNode after = json("price", FIRST, "--json", "--out", out(), "--catalogue", catalogue)
                .get("orders")
                .get(0);
        assertThat(element(after, "Subcontract")).isGreaterThan(element(before, "Subcontract"));
        assertThat(element(after, "Coating, own oven")).isLessThan(element(before, "Coating, own oven"));
        assertThat(number(report(after, "cost-statement").get("facts").get("full-cost"), "value"))
                .isNotEqualByComparingTo(
                        number(report(before, "cost-statement").get("facts").get("full-cost"), "value"));
    }

    private static BigDecimal element(JsonNode order, String name) {
        for (JsonNode row : table(order, "cost-statement", "elements")) {
            if (row.get("element").asText().equals(name)) {
                return number(row, "kit");
            }
        }
        throw new AssertionError(name);
    }

    @Test
    void nothing_but_the_quotation_stands_in_the_customers_folder() throws IOException {
        boltlore("price", FIRST, "--out", out());
        try (Stream<Path> all = Files.walk(out().resolve("BL-1001/customer"))) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(file -> file.getFileName().toString()))
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(name).startsWith("quotation"));
        }
    }

    /** A table of the report of that name. */
    private static JsonNode table(JsonNode order, String report, String table) {
        return report(order, report).get("tables").get(table);
    }

    private static JsonNode report(JsonNode order, String name) {
        for (JsonNode report : order.get("reports")) {
            if (report.get("report").asText().equals(name)) {
                return report;
            }
        }
        throw new AssertionError(name);
    }

    private static BigDecimal sum(JsonNode rows, String column) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode row : rows) {
            sum = sum.add(number(row, column));
        }
        return sum;
    }

    private static BigDecimal step(JsonNode order, String name, String column) {
        for (JsonNode row : table(order, "cost-statement", "price")) {
            if (row.get("step").asText().equals(name)) {
                return number(row, column);
            }
        }
        throw new AssertionError(name);
    }

    @Test
    void figures_in_the_answer_for_programs_add_up() throws IOException {
        JsonNode order =
                json("price", PARTNERS, "--json", "--out", out()).get("orders").get(0);
        BigDecimal kit = sum(table(order, "cost-statement", "sub-systems"), "total");
        assertThat(sum(table(order, "cost-statement", "elements"), "kit")).isEqualByComparingTo(kit);
        assertThat(step(order, "Full cost of the kit", "cost")).isEqualByComparingTo(kit);
        JsonNode facts = report(order, "cost-statement").get("facts");
        assertThat(number(facts.get("full-cost"), "value"))
                .isEqualByComparingTo(kit.add(sum(table(order, "cost-statement", "elements"), "extras")));
        assertThat(number(facts.get("total-due"), "value"))
                .isEqualByComparingTo(step(order, "Price before tax", "quoted").add(step(order, "Tax", "quoted")));
        assertThat(facts.get("rate-of").get("value").asText()).isEqualTo("2026-06-15");
        assertThat(number(facts.get("margin-left"), "value")).isPositive();
        assertThat(table(order, "cost-statement", "critical-path")
                        .get(0)
                        .get("part")
                        .asText())
                .isEqualTo("PV-BX-FL-S");
    }

    @Test
    void the_price_before_tax_stands_in_the_workbook_as_it_is_told() throws IOException {
        JsonNode order =
                json("price", FIRST, "--json", "--out", out()).get("orders").get(0);
        try (ReadableWorkbook book =
                        new ReadableWorkbook(Files.newInputStream(out().resolve("BL-1001/customer/quotation.xlsx")));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            BigDecimal net = step(order, "Price before tax", "quoted");
            assertThat(rows.flatMap(Row::stream)
                            .filter(cell -> cell != null
                                    && (cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA))
                            .map(cell -> new BigDecimal(cell.getRawValue())))
                    .anyMatch(value -> value.compareTo(net) == 0);
        }
    }

    @Test
    void a_discount_and_a_currency_asked_for_come_before_the_partners_and_more_than_agreed_is_told()
            throws IOException {
        JsonNode order = json("price", PARTNERS, "--json", "--out", out(), "--discount", "10", "--currency", "EUR")
                .get("orders")
                .get(0);
        JsonNode facts = report(order, "cost-statement").get("facts");
        assertThat(facts.get("quoted-in").get("value").asText()).isEqualTo("EUR");
        assertThat(facts.has("rate")).isFalse();
        assertThat(step(order, "Discount, 10 %", "quoted")).isNegative();
        assertThat(order.get("findings"))
                .anyMatch(finding -> finding.get("kind").asText().equals("discount above agreed")
                        && finding.get("severity").asText().equals("check")
                        && finding.get("sentence").asText().startsWith("The discount is 10 %; 4 % is agreed with "));
    }

    @Test
    void the_discount_that_is_agreed_is_no_finding() throws IOException {
        JsonNode order = json("price", PARTNERS, "--json", "--out", out(), "--discount", "4")
                .get("orders")
                .get(0);
        assertThat(kinds(order)).doesNotContain("discount above agreed", "loss");
    }

    @Test
    void the_discount_of_the_orders_own_terms_is_agreed_and_only_more_than_that_is_told() throws IOException {
        Path order = folder.resolve("own-terms.json");
        Files.writeString(
                order,
                Files.readString(Path.of(FIRST))
                        .strip()
                        .replaceAll("\\}$", ", \"terms\": {\"discountPercent\": \"7\"}}"));

        assertThat(kinds(priced(order))).doesNotContain("discount above agreed");
        assertThat(kinds(priced(order, "--discount", "7.1"))).contains("discount above agreed");
        assertThat(kinds(priced(FIRST, "--discount", "7"))).contains("discount above agreed");
    }

    private JsonNode priced(Object order, String... options) throws IOException {
        Object[] command = Stream.concat(Stream.of("price", order, "--json", "--out", out()), Stream.of(options))
                .toArray();
        return json(command).get("orders").get(0);
    }

    @Test
    void a_price_below_full_cost_is_a_loss_that_is_told_and_written_all_the_same() throws IOException {
        JsonNode order = json("price", FIRST, "--json", "--out", out(), "--discount", "60")
                .get("orders")
                .get(0);
        assertThat(kinds(order)).contains("loss", "discount above agreed").doesNotContain("margin below target");
        assertThat(number(report(order, "cost-statement").get("facts").get("margin-left"), "value"))
                .isNegative();
        assertThat(out().resolve("BL-1001/customer/quotation.xlsx")).isRegularFile();
    }

    @Test
    void a_lower_margin_than_prices_are_made_with_is_told() throws IOException {
        JsonNode order = json("price", FIRST, "--json", "--out", out(), "--discount", "5")
                .get("orders")
                .get(0);
        assertThat(kinds(order)).contains("margin below target").doesNotContain("loss");
        assertThat(order.get("findings"))
                .anyMatch(finding -> finding.get("kind").asText().equals("margin below target")
                        && finding.get("severity").asText().equals("check"));
        assertThat(kinds(json("price", FIRST, "--json", "--out", folder.resolve("whole"))
                        .get("orders")
                        .get(0)))
                .doesNotContain("margin below target");
    }

    @Test
    void a_due_date_that_cannot_be_kept_and_the_parts_that_are_late_are_told_from_the_first_day_too_late()
            throws IOException {
        JsonNode late = json("price", FIRST, "--json", "--out", out(), "--on", "2026-04-26")
                .get("orders")
                .get(0);
        assertThat(late.get("findings"))
                .anyMatch(finding -> finding.get("sentence")
                        .asText()
                        .equals(
                                "The kit is due on 2026-06-19; everything ordered on 2026-04-26, it ships on 2026-06-20 at"
                                        + " the earliest, 1 days too late."))
                .anyMatch(finding -> finding.get("sentence").asText().endsWith("before 2026-04-26: DU-90."));
        JsonNode inTime = json("price", FIRST, "--json", "--out", out(), "--on", "2026-04-25")
                .get("orders")
                .get(0);
        assertThat(kinds(inTime)).doesNotContain("due date too soon", "order by date past");
    }

    private static List<String> kinds(JsonNode order) {
        List<String> kinds = new ArrayList<>();
        order.get("findings").forEach(finding -> kinds.add(finding.get("kind").asText()));
        return kinds;
    }

    @Test
    void the_findings_of_the_workshop_stand_in_no_file_of_the_customers() throws IOException {
        boltlore("price", FIRST, "--out", out(), "--discount", "60");
        assertThat(out().resolve("BL-1001/workshop/json/cost-statement.json"))
                .content()
                .contains("makes a loss");
        assertThat(out().resolve("BL-1001/customer/json/quotation.json"))
                .content()
                .doesNotContain("makes a loss")
                .doesNotContain("full cost");
    }

    @Test
    void an_exchange_rate_that_has_run_out_is_refused_and_nothing_is_written() {
        Ran ran = boltlore("price", PARTNERS, "--on", "2026-08-01", "--out", out());
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err())
                .contains("an exchange rate of AUD from 2026-06-15 that ran out on 2026-07-30")
                .contains("Add today's rate under 'rates', or quote in another currency.");
        assertThat(out()).doesNotExist();
    }

    @Test
    void a_kit_whose_exchange_rate_has_run_out_says_so_and_is_written_without_a_price() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, "orders/bl-1010.json", "2026-07-06", "2026-08-01");
        Ran ran = boltlore(
                "kit", "--all", catalogue.resolve("orders/bl-1010.json"), "--catalogue", catalogue, "--out", out());
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Check, price: No price: No price: workshop/pricing.json holds an exchange rate of AUD");
        assertThat(out().resolve("BL-1010/bill.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1010/customer/packing-list.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1010/customer/quotation.xlsx")).doesNotExist();
    }

    @Test
    void kit_all_keeps_quotation_and_cost_statement_in_the_folders_that_price_writes() {
        boltlore("kit", "--all", FIRST, "--out", out());
        assertThat(out().resolve("BL-1001/customer/quotation.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/workshop/cost-statement.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/quotation.xlsx")).doesNotExist();
        assertThat(out().resolve("BL-1001/cost-statement.xlsx")).doesNotExist();
    }

    @Test
    void a_rate_is_taken_on_its_last_day() {
        assertThat(boltlore("price", PARTNERS, "--on", "2026-07-30", "--out", out())
                        .exit())
                .isZero();
    }

    @Test
    void a_discount_that_leaves_nothing_or_adds_is_a_wrong_call() {
        assertThat(boltlore("price", FIRST, "--discount", "100").exit()).isEqualTo(2);
        assertThat(boltlore("price", FIRST, "--discount", "-1").exit()).isEqualTo(2);
        assertThat(boltlore("price", FIRST, "--discount", "ten").err()).contains("'ten'");
        assertThat(boltlore("price", FIRST, "--currency", "EURO").exit()).isEqualTo(2);
    }

    @Test
    void an_order_that_something_stops_is_told_and_not_priced() {
        Ran ran = boltlore("price", STOPPED, FIRST, "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("BL-1006, ").contains("BL-1001, ");
        assertThat(out().resolve("BL-1006")).doesNotExist();
        assertThat(out().resolve("BL-1001")).exists();
    }

    @Test
    void a_catalogue_without_terms_is_told_what_to_add() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder, "workshop/pricing.json", "\"perHour\": \"26.00\"", "\"perHour\": \"26.00\"");
        Files.delete(catalogue.resolve("workshop/pricing.json"));
        // Without exchange rates no supplier can be paid in another currency.
        for (String parts : List.of("parts/common-cooling.json", "parts/common-fixings.json")) {
            Path file = catalogue.resolve(parts);
            Files.writeString(file, Files.readString(file).replace("\"currency\": \"GBP\", ", ""));
        }
        Ran ran = boltlore("price", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).contains("workshop/pricing.json").contains("Add it; catalog/README.md says how.");
        assertThat(boltlore("kit", FIRST, "--catalogue", catalogue, "--out", out())
                        .out())
                .contains("Note, price: Not judged: Price: workshop/pricing.json is missing");
        assertThat(boltlore("check", "--catalogue", catalogue).err()).doesNotContain("pricing.json");
    }

    @Test
    void the_same_order_gives_the_same_bytes() throws IOException {
        boltlore("price", FIRST, "--out", out());
        byte[] first = Files.readAllBytes(out().resolve("BL-1001/customer/quotation.xlsx"));
        boltlore("price", FIRST, "--out", folder.resolve("again"));
        assertThat(folder.resolve("again/BL-1001/customer/quotation.xlsx")).hasBinaryContent(first);
    }
}
