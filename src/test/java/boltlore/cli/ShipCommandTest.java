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
        assertThat(ran.out()).contains("Battery modules (UN 3480)").contains("Shipping papers of 2 orders written to ");
        assertThat(out().resolve("BL-1001/shipping-papers.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-2001/json/shipping-papers.json")).isRegularFile();
    }

    @Test
    void masses_in_the_answer_for_programs_add_up() throws IOException {
        JsonNode order =
                json("ship", FIRST, "--json", "--out", out()).get("orders").get(0);
        BigDecimal gross = BigDecimal.ZERO;
        for (JsonNode crate : order.get("crates")) {
            gross = gross.add(new BigDecimal(crate.get("grossKg").asText()));
        }
        assertThat(gross.subtract(new BigDecimal(order.get("grossKg").asText())).abs())
                .as("each rounded")
                .isLessThan(new BigDecimal("0.02"));
        assertThat(order.get("stops").asBoolean()).isFalse();
    }

    @Test
    void orders_in_one_vehicle_count_together_by_the_road_rule() throws IOException {
        BigDecimal one = new BigDecimal(
                json("ship", FIRST, "--json", "--out", out()).get("roadPoints").asText());
        BigDecimal other = new BigDecimal(json("ship", OTHER_FAMILY, "--json", "--out", out())
                .get("roadPoints")
                .asText());
        JsonNode both = json("ship", FIRST, OTHER_FAMILY, "--json", "--out", out());
        assertThat(new BigDecimal(both.get("roadPoints").asText())).isEqualByComparingTo(one.add(other));
    }

    @Test
    void by_air_packages_above_35_kg_of_batteries_stop() {
        Ran ran = boltlore("ship", FIRST, "--by", "air", "--to", "US", "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("Stops: Lithium: By air crate 4 may hold 35 kg");
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
                .contains("DU-90 Drive unit with inverter, 90 kW (84 kg, 1610 x 470 x 420 mm) goes into no crate");
    }

    @Test
    void a_workshop_that_names_no_crates_ships_nothing() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, "workshop/shipping.json", "\"crate\"", "\"crate\"");
        Files.delete(catalogue.resolve("workshop/shipping.json"));
        Ran ran = boltlore("ship", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out()).contains("shipping.json names no crate");
    }

    @ParameterizedTest
    @ValueSource(strings = {"XX", "France", "fr,xx"})
    void what_is_no_country_is_refused(String to) {
        Ran ran = boltlore("ship", FIRST, "--to", to, "--out", out());
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("No country has the code");
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
                .contains("Stops: Not packed: chiller-bracket, compressor-bracket, export-bracket");
        Ran decided = boltlore("ship", "catalog/orders/bl-1003.json", "--to", "DE", "--out", out());
        assertThat(decided.exit()).as("%s", decided).isZero();
    }

    @Test
    void values_are_those_of_the_quotation_in_its_currency() throws IOException {
        JsonNode plain =
                json("ship", FIRST, "--json", "--out", out()).get("orders").get(0);
        JsonNode less = json("ship", FIRST, "--discount", "10", "--json", "--out", out())
                .get("orders")
                .get(0);
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : less.get("customs")) {
            sum = sum.add(new BigDecimal(line.get("value").asText()));
        }
        assertThat(sum).isEqualByComparingTo(less.get("price").asText());
        assertThat(sum).isLessThan(new BigDecimal(plain.get("price").asText()));
        Ran unknown = boltlore("ship", FIRST, "--currency", "BRL", "--out", out());
        assertThat(unknown.exit()).isEqualTo(3);
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
