package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's vehicles weighed, and what the workshop gets of it. */
class AxleLoadsCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String OTHER_FAMILY = "catalog/orders/bl-2001.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private JsonNode report(String order) throws IOException {
        return new ObjectMapper()
                .readTree(
                        boltlore("axle-loads", order, "--json", "--out", out()).out())
                .get("orders")
                .get(0)
                .get("reports")
                .get(0);
    }

    private static BigDecimal number(JsonNode node, String key) {
        return new BigDecimal(node.get(key).asText());
    }

    private Path changed(String file, String from, String to) throws IOException {
        return ChangedCatalogue.in(folder, file, from, to);
    }

    @Test
    void tells_axle_loads_and_writes_a_statement_for_each_order() {
        Ran ran = boltlore("axle-loads", FIRST, OTHER_FAMILY, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(ran.out())
                .contains("Converted, fully laden")
                .contains("Smallest margin           4.5 kg")
                .doesNotContain("Stop,")
                .contains("2 sheets written to ");
        assertThat(out().resolve("BL-1001/weight-statement.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-2001/json/weight-statement.json")).isRegularFile();
    }

    @Test
    void tells_what_the_conversion_changes_and_where_the_markets_limit_comes_from() {
        String told = boltlore("axle-loads", FIRST, "--out", out()).out().replaceAll("\\s+", " ");

        assertThat(told)
                .contains("Mass, unladen (kg) 1590 1930.4 340.4 at most 120 % of the mass before conversion")
                .contains("Centre of gravity above the road (mm) 680 631 -49")
                .contains("Static stability factor (track / 2h) 1.01 1.09 0.08 higher is steadier")
                .contains("order of 13 March 2020");
    }

    @Test
    void loads_in_the_answer_for_programs_add_up() throws IOException {
        JsonNode report = report(FIRST);
        assertThat(report.get("tables").get("axle-loads"))
                .hasSize(5)
                .allSatisfy(loads -> assertThat(number(loads, "front").add(number(loads, "rear")))
                        .as("each rounded")
                        .isCloseTo(number(loads, "whole"), within(new BigDecimal("0.1"))));
        BigDecimal parts = BigDecimal.ZERO;
        for (JsonNode part : report.get("tables").get("sub-systems")) {
            parts = parts.add(number(part, "mass"));
        }
        JsonNode facts = report.get("facts");
        assertThat(parts)
                .as("each rounded")
                .isCloseTo(number(facts.get("added"), "value"), within(new BigDecimal("0.5")));
        JsonNode mass = report.get("tables").get("changes").get(0);
        assertThat(number(mass, "change"))
                .as("rounded")
                .isCloseTo(
                        number(facts.get("added"), "value").subtract(number(facts.get("removed"), "value")),
                        within(new BigDecimal("0.05")));
    }

    @Test
    void the_workbook_read_by_another_reader_has_loads_that_add_up() throws IOException {
        boltlore("axle-loads", FIRST, "--out", out());
        byte[] xlsx = Files.readAllBytes(out().resolve("BL-1001/weight-statement.xlsx"));
        List<Row> loads;
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(xlsx))) {
            loads = workbook.getFirstSheet().read().stream()
                    .filter(row -> row.getCellCount() > 5 && row.getCellText(0).startsWith("Converted,"))
                    .toList();
        }
        assertThat(loads)
                .hasSize(4)
                .allSatisfy(
                        row -> assertThat(numbers(row).get(0).add(numbers(row).get(2)))
                                .isCloseTo(numbers(row).get(4), within(new BigDecimal("0.001"))));
    }

    /** Front, left, rear, left, whole, left, share: the filled number cells in their order. */
    private static List<BigDecimal> numbers(Row row) {
        return row.stream()
                .filter(cell -> cell != null && cell.getType() == CellType.NUMBER)
                .map(cell -> new BigDecimal(cell.getRawValue()))
                .toList();
    }

    @Test
    void the_demos_drivers_weigh_what_common_practice_says() throws IOException {
        for (String order : List.of(FIRST, OTHER_FAMILY)) {
            JsonNode loads = report(order).get("tables").get("axle-loads");
            // AL-09: 75 kg, common practice, no source.
            assertThat(number(loads.get(2), "whole").subtract(number(loads.get(1), "whole")))
                    .isEqualByComparingTo("75");
        }
    }

    @Test
    void an_axle_above_its_limit_is_told_and_ends_with_another_code() throws IOException {
        Path catalogue = changed(
                "families/pannier-van/family.json",
                "\"front\": 1165, \"rear\": 1300",
                "\"front\": 1100, \"rear\": 1300");
        Ran ran = boltlore("axle-loads", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "Stop, axle-loads: Weight above limit: Converted, fully laden: the front axle carries 1160.5 kg, 60.5 kg more than its limit"
                                + " of 1100 kg. Of the kit, most comes from Battery module");
        assertThat(out().resolve("BL-1001/weight-statement.xlsx")).isRegularFile();
    }

    @Test
    void a_market_that_allows_less_than_the_kit_weighs() throws IOException {
        Path catalogue = changed("workshop/markets.json", "\"maxPercent\": \"120\"", "\"maxPercent\": \"117\"");
        Ran ran = boltlore("axle-loads", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "Stop, axle-loads: Mass above market limit: The converted vehicle is 70.1 kg above 117 % of its"
                                + " mass before conversion.");
    }

    @Test
    void a_family_without_weights_still_works_and_says_what_is_missing() throws IOException {
        Path catalogue = changed("families/pannier-van/family.json", "Ockmere Pannier", "Ockmere Pannier");
        Files.delete(catalogue.resolve("families/pannier-van/weights.json"));
        Ran ran = boltlore("axle-loads", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("Check, axle-loads: Station not known: 755.485 kg of the kit have no station");
        assertThat(ran.out()).doesNotContain("Smallest margin").doesNotContain("Market limit");
        assertThat(ran.exit()).isZero();
    }

    @Test
    void a_negative_mass_is_refused_with_its_place() throws IOException {
        Path catalogue = changed("families/pannier-van/weights.json", "\"massKg\": \"198\"", "\"massKg\": \"-198\"");
        Ran ran = boltlore("axle-loads", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("weights.json").contains("-198").contains("1 fault.");
    }

    @Test
    void an_order_that_something_stops_is_told_and_the_others_are_weighed() {
        Ran ran = boltlore("axle-loads", STOPPED, FIRST, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(out().resolve("BL-1001")).isDirectory();
        assertThat(out().resolve("BL-1006")).doesNotExist();
    }

    @Test
    void no_order_that_can_be_weighed() {
        Ran ran = boltlore("axle-loads", STOPPED, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("For no order of these can axle loads be calculated.");
    }

    @Test
    void an_order_given_twice() {
        Ran ran = boltlore("axle-loads", FIRST, FIRST, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("Give each order once.");
    }

    @Test
    void the_same_bytes_on_every_run() {
        boltlore("axle-loads", FIRST, "--out", folder.resolve("one"));
        boltlore("axle-loads", FIRST, "--out", folder.resolve("other"));
        for (String file : List.of("weight-statement.xlsx", "json/weight-statement.json")) {
            assertThat(folder.resolve("other/BL-1001").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("one/BL-1001").resolve(file));
        }
    }
}
