package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Orders are shipped")
class ShipCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String OTHER_FAMILY = "catalog/orders/bl-2001.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private JsonNode json(Object... arguments) throws IOException {
        return new ObjectMapper().readTree(boltlore(arguments).out());
    }

    @Test
    void crates_are_told_and_papers_written_for_each_order() {
        Ran ran = boltlore("ship", FIRST, OTHER_FAMILY, "--to", "FR", "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("modules (UN")
                .contains("(UN 3480)")
                .contains("6 sheets written to ");
        assertThat(out().resolve("BL-1001/shipping-papers.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/customer/packing-list.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-1001/customer/pro-forma-invoice.xlsx")).doesNotExist();
        assertThat(out().resolve("BL-2001/json/shipping-papers.json")).isRegularFile();
    }

    @Test
    void a_destination_that_nobody_has_told_is_to_be_checked_when_it_is_shipped_and_only_noted_in_the_kit()
            throws IOException {
        Path homeless = Files.writeString(
                folder.resolve("order.json"),
                Files.readString(Path.of(FIRST)).replaceAll("(?m)^ \"consignee\".*\n", ""));
        String shipped = boltlore("ship", homeless, "--out", out()).out().replaceAll("\\s+", " ");
        String kit =
                boltlore("kit", homeless, "--out", out().resolve("kit")).out().replaceAll("\\s+", " ");

        assertThat(shipped)
                .contains("Check, ship: Destination not given: The destination is not given (--to)")
                .contains("Check, ship: Consignee not known: Nobody has said where the crates go");
        assertThat(boltlore("ship", FIRST, "--out", out()).out())
                .as("the consignee's country is the destination")
                .doesNotContain("Destination not given", "Consignee not known");
        assertThat(kit)
                .contains("Note, ship: Destination not given yet: The destination is not given yet")
                .doesNotContain("--to");
    }

    private JsonNode order(Object... arguments) throws IOException {
        return json(arguments).get("orders").get(0);
    }

    private static JsonNode report(JsonNode order) {
        return order.get("reports").get(0);
    }

    private static BigDecimal customsValue(JsonNode order) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : invoice(order).get("tables").get("customs-lines")) {
            sum = sum.add(new BigDecimal(line.get("value").asText()));
        }
        return sum;
    }

    private static JsonNode invoice(JsonNode order) {
        for (JsonNode report : order.get("reports")) {
            if (report.get("tables").has("customs-lines")) {
                return report;
            }
        }
        throw new AssertionError("No invoice for customs");
    }

    private static BigDecimal fact(JsonNode order, String key) {
        return new BigDecimal(report(order).get("facts").get(key).get("value").asText());
    }

    @Test
    void masses_in_the_answer_for_programs_add_up() throws IOException {
        JsonNode order = order("ship", FIRST, "--json", "--out", out());
        BigDecimal gross = BigDecimal.ZERO;
        for (JsonNode crate : report(order).get("tables").get("crates")) {
            gross = gross.add(new BigDecimal(crate.get("gross").asText()));
        }
        assertThat(gross.subtract(fact(order, "gross")).abs())
                .as("each rounded to 0.1 kg")
                .isLessThan(new BigDecimal("1"));
        assertThat(report(order).get("tables").get("packing")).hasSizeGreaterThan(50);
        assertThat(order.get("stops").asBoolean()).isFalse();
    }

    @Test
    void orders_in_one_vehicle_count_together_by_the_road_rule() throws IOException {
        BigDecimal one = fact(order("ship", FIRST, "--json", "--out", out()), "points");
        BigDecimal other = fact(order("ship", OTHER_FAMILY, "--json", "--out", out()), "points");
        JsonNode both = order("ship", FIRST, OTHER_FAMILY, "--json", "--out", out());
        assertThat(fact(both, "points")).isEqualByComparingTo(one.add(other));
        assertThat(both.get("findings").findValuesAsText("sentence"))
                .anySatisfy(says -> assertThat(says).contains("ADR points with the other order in the vehicle"));
    }

    @Test
    void by_air_packages_above_35_kg_of_batteries_stop() {
        Ran ran = boltlore("ship", FIRST, "--by", "air", "--to", "US", "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "Stop, ship: Package too heavy by air: By air (ICAO Technical Instructions 2025-2026) crate 4 may hold 35 kg");
        assertThat(boltlore("ship", FIRST, "--by", "sea", "--to", "US", "--out", out())
                        .exit())
                .isZero();
    }

    @Test
    void a_battery_without_its_number_stops() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder,
                "parts/common-low-voltage.json",
                ", \"transport\": {\"un\": \"UN 2800\", \"class\": \"8\"}",
                "");
        Ran ran = boltlore("ship", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("LV-B70").contains("has no UN number");
    }

    @Test
    void a_part_that_no_crate_takes_stops_and_is_named() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder,
                "workshop/shipping.json",
                "\"DU-90\", \"sizeMm\": {\"length\": 610",
                "\"DU-90\", \"sizeMm\": {\"length\": 1610");
        Ran ran = boltlore("ship", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("DU-90 Drive unit with inverter, 90 kW (84 kg, 1610 × 470 × 420 mm) goes into no crate");
    }

    @Test
    void a_workshop_that_does_not_say_how_it_ships_is_told_so() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, "workshop/shipping.json", "\"crate\"", "\"crate\"");
        Files.delete(catalogue.resolve("workshop/shipping.json"));
        Ran ran = boltlore("ship", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Note, ship: Not judged: Shipping: workshop/shipping.json is missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"XX", "France", "fr,xx"})
    void what_is_no_country_is_refused(String to) {
        Ran ran = boltlore("ship", FIRST, "--to", to, "--out", out());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("which is no country's code");
        assertThat(out()).doesNotExist();
    }

    @Test
    void an_order_that_is_stopped_is_told_and_not_packed() {
        Ran ran = boltlore("ship", STOPPED, "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("No order of these can be shipped.");
        assertThat(out()).doesNotExist();
    }

    @Test
    void an_order_that_has_not_decided_on_its_brackets_stops_and_names_them() {
        Ran ran = boltlore("ship", "catalog/orders/bl-1002.json", "--to", "DE", "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "Stop, ship: Brackets not decided: Battery chiller bracket (chiller-bracket), Compressor bracket");
        Ran decided = boltlore("ship", "catalog/orders/bl-1003.json", "--to", "DE", "--out", out());
        assertThat(decided.exit()).as("%s", decided).isZero();
    }

    @Test
    void values_are_those_of_the_quotation_in_its_currency() throws IOException {
        JsonNode plain = order("ship", FIRST, "--to", "GB", "--json", "--out", out());
        JsonNode less = order("ship", FIRST, "--to", "GB", "--discount", "10", "--json", "--out", out());
        assertThat(customsValue(plain)).isGreaterThan(new BigDecimal("1000"));
        assertThat(customsValue(less)).isEqualByComparingTo(customsValue(plain).multiply(new BigDecimal("0.9")));
        Ran unknown = boltlore("ship", FIRST, "--currency", "BRL", "--out", out());
        assertThat(unknown.exit()).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"--by, rail", "--discount, 96", "--discount, much", "--currency, XXQ", "--on, 2026-02-30", "--on, today"
    })
    void what_does_not_fit_an_option_is_refused(String option, String value) {
        Ran ran = boltlore("ship", FIRST, option, value, "--out", out());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains(option).contains(value);
        assertThat(out()).doesNotExist();
    }

    @Test
    void all_crates_stand_beside_the_papers_as_a_drawing() throws IOException {
        boltlore("ship", FIRST, "--out", out());
        assertThat(Files.readString(out().resolve("BL-1001/crates.svg")))
                .startsWith("<svg")
                .contains("crate 1 ");
    }

    @Test
    void no_cost_of_the_workshop_stands_in_what_is_written() throws IOException {
        boltlore("ship", FIRST, "--out", out());
        String papers = Files.readString(out().resolve("BL-1001/json/shipping-papers.json"));
        String answer = boltlore("ship", FIRST, "--json", "--out", out()).out();
        for (String text : List.of(papers, answer)) {
            assertThat(text)
                    .doesNotContainIgnoringCase("\"cost")
                    .doesNotContain("mark-up")
                    .doesNotContain("margin");
        }
    }
}
