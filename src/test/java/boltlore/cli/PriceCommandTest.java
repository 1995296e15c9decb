package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
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
                .contains("The customer pays ")
                .contains("The kit ships after 55 days: order and receive DU-90")
                .contains("Half the days of DU-90 would gain 7 days.")
                .contains("2 cost statements and quotations written to ")
                .contains("only what is under 'customer' leaves the house");
        assertThat(out().resolve("BL-1001/customer/quotation.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/workshop/cost-statement.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1010/customer/json/quotation.json")).isRegularFile();
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

    @Test
    void figures_in_the_answer_for_programs_add_up() throws IOException {
        JsonNode order =
                json("price", PARTNERS, "--json", "--out", out()).get("orders").get(0);
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode some : order.get("bySubSystem")) {
            sum = sum.add(number(some.get("cost"), "total"));
        }
        assertThat(number(order.get("kit"), "total")).isEqualByComparingTo(sum);
        assertThat(number(order, "fullCost")).isEqualByComparingTo(sum.add(number(order.get("extras"), "total")));
        JsonNode quotation = order.get("quotation");
        assertThat(number(quotation, "total"))
                .isEqualByComparingTo(number(quotation, "beforeTax").add(number(quotation, "tax")));
        assertThat(order.get("leadTime").get("chain").get(0).get("part").asText())
                .isEqualTo("BM-44");
        assertThat(order.get("bars").asText()).startsWith("<svg");
    }

    @Test
    void the_total_stands_in_the_workbook_as_it_is_told() throws IOException {
        JsonNode order =
                json("price", FIRST, "--json", "--out", out()).get("orders").get(0);
        try (ReadableWorkbook book =
                        new ReadableWorkbook(Files.newInputStream(out().resolve("BL-1001/customer/quotation.xlsx")));
                Stream<Row> rows = book.getFirstSheet().openStream()) {
            assertThat(rows.flatMap(Row::stream)
                            .filter(cell -> cell != null
                                    && (cell.getType() == CellType.NUMBER || cell.getType() == CellType.FORMULA))
                            .map(cell -> new BigDecimal(cell.getRawValue())))
                    .anyMatch(value -> value.compareTo(number(order.get("quotation"), "total")) == 0);
        }
    }

    @Test
    void a_discount_and_a_currency_asked_for_come_before_the_partners() throws IOException {
        JsonNode quotation = json("price", PARTNERS, "--json", "--out", out(), "--discount", "10", "--currency", "EUR")
                .get("orders")
                .get(0)
                .get("quotation");
        assertThat(quotation.get("currency").asText()).isEqualTo("EUR");
        assertThat(number(quotation, "discountPercent")).isEqualByComparingTo("10");
        assertThat(quotation.has("rate")).isFalse();
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
    void a_rate_is_taken_on_its_last_day() {
        assertThat(boltlore("price", PARTNERS, "--on", "2026-07-30", "--out", out())
                        .exit())
                .isZero();
    }

    @Test
    void a_discount_that_leaves_nothing_or_adds_is_a_wrong_call() {
        assertThat(boltlore("price", FIRST, "--discount", "100").exit()).isEqualTo(2);
        assertThat(boltlore("price", FIRST, "--discount", "-1").exit()).isEqualTo(2);
        assertThat(boltlore("price", FIRST, "--discount", "ten").err()).contains("'ten' is not a percentage");
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
                folder, "workshop/pricing.json", "\"validDays\": 30,\n \"excl", "\"validDays\": 30,\n \"excl");
        Files.delete(catalogue.resolve("workshop/pricing.json"));
        Ran ran = boltlore("price", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(3);
        assertThat(ran.err()).contains("workshop/pricing.json").contains("Add it; catalog/README.md says how.");
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
