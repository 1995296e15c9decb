package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Charging and high voltage of the demo's orders, and what the workshop gets of it. */
class ChargingCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String OTHER_FAMILY = "catalog/orders/bl-2001.json";
    private static final String STOPPED = "catalog/orders/bl-1006.json";
    private static final String ELECTRICS = "families/pannier-van/electrics.json";

    @TempDir
    private Path folder;

    private Path out() {
        return folder.resolve("out");
    }

    private JsonNode order(Object... arguments) throws IOException {
        return new ObjectMapper()
                .readTree(boltlore(arguments).out())
                .get("orders")
                .get(0);
    }

    private static BigDecimal number(JsonNode node, String key) {
        return new BigDecimal(node.get(key).asText());
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void tells_power_and_time_and_writes_a_sheet_for_each_order() {
        Ran ran = boltlore("charging", FIRST, OTHER_FAMILY, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(flat(ran.out()))
                .contains("At home 16 20 A 3 230 16.0 11.0 2.9")
                .contains("Supply and charger limit the current to 16 A in each phase.")
                .contains("Isolation, at least 201.6 kΩ")
                .contains("Charger OK The charger feeds from 200 to 430 V, the pack goes from 288 to 403.2 V.")
                .contains("Precharge OK One precharge leaves 101.6 J in a resistor rated 1200 J a pulse.")
                .contains("2 sheets written to ");
        assertThat(out().resolve("BL-1001/charging-and-high-voltage.xlsx")).isRegularFile();
        assertThat(out().resolve("BL-2001/json/charging-and-high-voltage.json")).isRegularFile();
    }

    @Test
    void power_in_the_answer_for_programs_is_phases_times_volts_times_amps() throws IOException {
        JsonNode order = order("charging", FIRST, "--json", "--out", out());
        JsonNode tables = order.get("reports").get(0).get("tables");
        JsonNode home = tables.get("ways").get(1);
        assertThat(home.get("kilowatts").isNumber()).isTrue();
        assertThat(number(home, "kilowatts"))
                .isEqualByComparingTo(number(home, "phases")
                        .multiply(number(home, "volts"))
                        .multiply(number(home, "amps"))
                        .movePointLeft(3));
        assertThat(order.get("stops").asBoolean()).isFalse();
        assertThat(tables.get("branches")).hasSizeGreaterThan(5);
    }

    @Test
    void the_workbook_read_by_another_reader_keeps_load_below_cable() throws IOException {
        boltlore("charging", FIRST, "--out", out());
        byte[] xlsx = Files.readAllBytes(out().resolve("BL-1001/charging-and-high-voltage.xlsx"));
        List<Row> branches;
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(xlsx))) {
            branches = workbook.findSheet("High voltage").orElseThrow().read().stream()
                    .filter(row -> row.stream()
                                    .anyMatch(cell -> cell != null
                                            && cell.getRawValue() != null
                                            && cell.getText().startsWith("HV-W"))
                            && row.getCellCount() > 6)
                    .filter(row -> row.stream()
                            .anyMatch(cell -> cell != null && cell.getText().contains("to ")))
                    .toList();
        }
        assertThat(branches).hasSizeGreaterThan(5).allSatisfy(row -> {
            List<BigDecimal> numbers = row.stream()
                    .filter(cell -> cell != null && cell.getType() == org.dhatim.fastexcel.reader.CellType.NUMBER)
                    .map(cell -> new BigDecimal(cell.getRawValue()))
                    .toList();
            assertThat(numbers.get(0)).isLessThanOrEqualTo(numbers.get(numbers.size() - 1));
        });
    }

    @Nested
    class At_another_supply {

        @Test
        void what_is_asked_comes_first_in_place_of_the_orders_own() {
            Ran ran = boltlore("charging", FIRST, "--supply", "1x230V 16A", "--cable", "13", "--out", out());
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(flat(ran.out()))
                    .contains("As asked 16 13 A 1 230 13.0 3.0")
                    .contains("The supply has 1 phase, so the other phases of the charger are idle.")
                    .doesNotContain("At home");
        }

        @ParameterizedTest
        @ValueSource(strings = {"3x230V 16A", "3 x 230 V, 16 A", "3x230v16a", "3×230V 16A"})
        void may_be_written_with_and_without_blanks(String supply) {
            assertThat(boltlore("charging", FIRST, "--supply", supply, "--out", out())
                            .exit())
                    .isZero();
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                value = {
                    "1x2300V 16A | expected from 90 to 305 V",
                    "1x0V 16A | expected from 90 to 305 V",
                    "3x230V 0A | expected from 1 to 125 A",
                    "3x230V 1600A | expected from 1 to 125 A",
                    "2x230V 16A | such as '3x230V 16A'",
                    "3x230V -16A | such as '3x230V 16A'",
                    "lots | such as '3x230V 16A'"
                })
        void that_cannot_be_is_refused_with_what_is_expected(String supply, String expected) {
            Ran ran = boltlore("charging", FIRST, "--supply", supply, "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.USAGE);
            assertThat(flat(ran.err())).contains(expected).doesNotContain("Exception");
            assertThat(out()).doesNotExist();
        }

        @ParameterizedTest
        @ValueSource(strings = {"16", "0", "-13", "70", "thick"})
        void a_cable_that_no_code_stands_for_is_refused(String cable) {
            Ran ran = boltlore("charging", FIRST, "--cable", cable, "--out", out());
            assertThat(ran.exit()).isEqualTo(Exit.USAGE);
            assertThat(flat(ran.err())).contains("expected 13, 20, 32 or 63");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"amps\": \"400\" | \"amps\": \"200\" | load of 381.4 A through a fuse of 200 A.",
                "\"amps\": \"460\" | \"amps\": \"200\" | load of 381.4 A on a cable with a current rating as installed of 200 A",
                "\"amps\": \"400\", \"volts\": \"500\" | \"amps\": \"400\", \"volts\": \"400\" | up to 403.2 V on a fuse rated 400 V.",
                "\"breakingKiloamps\": \"20\" | \"breakingKiloamps\": \"8\" | up to 8.8 kA, and the fuse breaks 8 kA.",
                "\"pulseJoule\": \"1200\" | \"pulseJoule\": \"100\" | One precharge leaves 101.6 J in a resistor rated 100 J",
                "\"abortAfterSeconds\": \"0.3\" | \"abortAfterSeconds\": \"0.17\" | the controller aborts after 0.17 s.",
                "\"abortAfterSeconds\": \"0.3\" | \"abortAfterSeconds\": \"0.35\" | leaves 1211 J in a resistor rated 1200 J a pulse",
                "\"yNanofarad\": \"400\" | \"yNanofarad\": \"4000\" | 4240 nF to the chassis hold 0.345 J",
                "\"fuse\": \"string-250\", \"fuseAfterMm\": 0, \"farEnd\": {\"fuse\": \"string-tap-250\"} | \"fuse\": \"string-250\", \"fuseAfterMm\": 0, \"farEnd\": {} | fed from its other end too",
                "\"fuse\": \"low-converter-250\", \"fuseAfterMm\": 250 | \"fuse\": \"low-converter-250\", \"fuseAfterMm\": 900 | 900 mm of cable between what feeds it and its fuse, at most 300 mm",
                "\"fuse\": \"low-converter-250\", \"fuseAfterMm\": 250, | | 12 V, converter to main fuse: no fuse",
                "\"highestVolts\": \"430\" | \"highestVolts\": \"400\" | the pack goes from 288 to 403.2 V.",
                "\"direct\": {\"volts\": \"1000\" | \"direct\": {\"volts\": \"400\" | the inlet is rated 400 V.",
                "\"inSeries\": 8, \"inParallel\": 2 | \"inSeries\": 8, \"inParallel\": 3 | The kit has 16 of BM-44, the pack 24",
                "\"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W95\" | \"fuse\": \"main-400\", \"fuseAfterMm\": 0, \"cable\": \"HV-W35\" | no HV-W35 is at the position"
            })
    void what_is_too_much_is_told_and_ends_with_another_code(String from, @Nullable String to, String says)
            throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, ELECTRICS, from, to == null ? "" : to);
        Ran ran = boltlore("charging", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran.out())).contains("Stop, charging: ").contains(says);
        assertThat(out().resolve("BL-1001/charging-and-high-voltage.xlsx")).isRegularFile();
    }

    @ParameterizedTest
    @CsvSource({"HV-F400, HV-F250", "HV-CB400, HV-CB250"})
    void a_fuse_that_is_not_in_the_kit_stops_the_kit(String from, String to) throws IOException {
        Path catalogue =
                ChangedCatalogue.in(folder, ELECTRICS, "\"part\": \"" + from + "\"", "\"part\": \"" + to + "\"");
        Ran ran = boltlore("charging", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.STOPPED);
        assertThat(flat(ran.out()))
                .contains("Stop, kit: Branch without its fuse: ")
                .contains("(" + to + "), which is not in the kit.");
    }

    @Test
    void a_family_without_electrics_still_works_and_says_what_is_missing() throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, ELECTRICS, "\"buses\"", "\"buses\"");
        Files.delete(catalogue.resolve(ELECTRICS));
        Ran ran = boltlore("charging", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).as("%s", ran).isZero();
        assertThat(flat(ran.out())).contains("Note, charging: Not judged: Charging: electrics.json is missing");
    }

    @Test
    void an_efficiency_of_nothing_is_refused_with_its_place() throws IOException {
        Path catalogue = ChangedCatalogue.in(
                folder,
                ELECTRICS,
                "\"efficiencyPercent\": \"94\", \"lowestVolts\"",
                "\"efficiencyPercent\": \"0\", \"lowestVolts\"");
        Ran ran = boltlore("charging", FIRST, "--catalogue", catalogue, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(ran.err()).contains("electrics.json").contains("above 0").contains("1 fault.");
    }

    @Test
    void an_order_that_something_stops_is_told_and_the_others_are_worked_out() {
        Ran ran = boltlore("charging", STOPPED, FIRST, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(out().resolve("BL-1001")).isDirectory();
        assertThat(out().resolve("BL-1006")).doesNotExist();
    }

    @Test
    void no_order_of_which_charging_can_be_worked_out() {
        Ran ran = boltlore("charging", STOPPED, "--out", out());
        assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
        assertThat(ran.out()).contains("For no order of these can charging be calculated.");
    }

    @Test
    void the_same_bytes_on_every_run() {
        boltlore("charging", FIRST, "--out", folder.resolve("one"));
        boltlore("charging", FIRST, "--out", folder.resolve("other"));
        for (String file : List.of("charging-and-high-voltage.xlsx", "json/charging-and-high-voltage.json")) {
            assertThat(folder.resolve("other/BL-1001").resolve(file))
                    .hasSameBinaryContentAs(folder.resolve("one/BL-1001").resolve(file));
        }
    }
}
