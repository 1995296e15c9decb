package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Filled-in records of tests")
class TestResultCommandTest {

    private static final String FIRST = "catalog/orders/bl-1001.json";
    private static final String GERMAN = "catalog/orders/bl-1011.json";

    @TempDir
    private Path folder;

    private FilledRecord first() {
        return FilledRecord.of(FIRST, folder.resolve("sheets"));
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    private Ran judge(Path... files) {
        Object[] arguments = new Object[files.length + 3];
        arguments[0] = "test-result";
        arguments[1] = "--out";
        arguments[2] = folder.resolve("report");
        System.arraycopy(files, 0, arguments, 3, files.length);
        return boltlore(arguments);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Nested
    @DisplayName("of a vehicle in order")
    class InOrder {

        @ParameterizedTest
        @ValueSource(strings = {FIRST, GERMAN, "catalog/orders/bl-1004.json", "catalog/orders/bl-2002.json"})
        void every_test_passes_and_a_report_is_written(String order) {
            Ran ran = judge(FilledRecord.of(order, folder.resolve("sheets")).in(file("record.json")));
            assertThat(ran.exit()).as("%s", ran).isZero();
            assertThat(ran.out()).containsPattern("All [0-9]+ tests passed\\.");
        }

        @Test
        void a_table_with_decimal_commas_says_the_same() {
            Ran ran = judge(first().withSemicolons(file("record.csv")));
            assertThat(ran.exit()).as("%s", ran).isZero();
        }

        @Test
        void two_halves_in_two_files_make_a_whole() throws IOException {
            String csv = Files.readString(first().withSemicolons(file("record.csv")));
            int half = csv.indexOf("\r\n", csv.length() / 2) + 2;
            Files.writeString(file("one.csv"), csv.substring(0, half));
            Files.writeString(file("two.csv"), csv.substring(0, csv.indexOf('\n') + 1) + csv.substring(half));
            assertThat(judge(file("one.csv"), file("two.csv")).exit()).isZero();
            assertThat(judge(file("one.csv")).exit()).isEqualTo(Exit.STOPPED);
        }
    }

    @Test
    void a_decimal_comma_that_nothing_keeps_together_is_told_as_such() throws IOException {
        String csv = Files.readString(first().withSemicolons(file("record.csv")));
        Files.writeString(file("bare.csv"), csv.replace(';', ','));

        Ran ran = judge(file("bare.csv"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(ran.err())).contains("found more cells than headings", "put it in quotation marks");
    }

    @Test
    void a_record_that_would_steer_a_terminal_is_refused_with_its_line() throws IOException {
        String csv = Files.readString(first().withSemicolons(file("record.csv")));
        int line = csv.indexOf('\n', csv.length() / 2) + 1;
        Files.writeString(file("bad.csv"), csv.substring(0, line) + "\u001B[31m" + csv.substring(line));

        Ran ran = judge(file("bad.csv"));

        assertThat(ran.exit()).isEqualTo(Exit.FAULTS);
        assertThat(flat(ran.err()))
                .contains("bad.csv:" + (csv.substring(0, line).lines().count() + 1))
                .contains("found the character U+001B, which cannot be seen; expected text that can be read");
        assertThat(ran.err()).doesNotContain("\u001B");
    }

    @Test
    void a_json_record_that_would_steer_a_terminal_is_refused() throws IOException {
        String json = Files.readString(first().in(file("record.json")));
        Files.writeString(file("bad.json"), json.replaceFirst("\"by\" *: *\"", "\"by\": \"\\\\u001b[31m"));

        assertThat(Files.readString(file("bad.json"))).contains("\\u001b");
        assertThat(judge(file("bad.json")).exit()).isEqualTo(Exit.FAULTS);
    }

    @Nested
    @DisplayName("of a vehicle that is not")
    class NotInOrder {

        @Test
        void what_failed_is_named_with_its_limit_and_by_how_much() {
            Ran ran = judge(first().write("bonding.charger", "0.12").in(file("record.json")));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran.out()))
                    .contains("Not passed: 1 of ")
                    .contains("Stop, test-result: Test failed: Bonding to the chassis, On-board charger: 0.12 Ω, limit"
                            + " below 0.1 Ω; outside the limit by 0.02 Ω");
        }

        @Test
        void isolation_by_voltages_that_cannot_be_stops_the_vehicle() {
            String box = "isolation-link.junction-box";
            Ran ran = judge(first().write(box + ".v1", "0.3")
                    .write(box + ".v2", "0.3")
                    .write(box + ".v1-ro", "0.2")
                    .in(file("record.json")));

            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran.out())).contains("not plausible, repeat: V1 is 0.3 V");
        }

        @Test
        void a_leak_found_is_named_by_what_was_found() {
            Ran ran = judge(first().write("cooling-leak.cold-plates", "free").in(file("record.json")));
            assertThat(flat(ran.out())).contains("Cooling plates: free, limit dry; found free");
        }

        @Test
        void what_is_missing_is_named_and_only_that() {
            Ran ran = judge(first().write("interlock-loop", "value", "").in(file("record.json")));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(ran.out())
                    .contains("Test not made: Resistance of the closed loop, whole vehicle")
                    .doesNotContain("failed");
        }

        @Test
        void what_the_kit_does_not_call_for_is_told() {
            Ran ran = judge(first().add("tipping.tipper-pump", "stationary", "", "2026-03-30")
                    .in(file("record.json")));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(flat(ran.out()))
                    .contains("Reading of no test: tipping.tipper-pump is filled in with stationary");
        }

        @Test
        void a_value_without_its_unit_is_told_in_words() {
            Ran ran = judge(first().write("bonding.charger", "unit", "").in(file("record.json")));
            assertThat(flat(ran.out()))
                    .contains("Reading not judged: Bonding to the chassis, On-board charger")
                    .contains("the unit is missing, it should be ohm");
        }
    }

    @Nested
    @DisplayName("made again")
    class MadeAgain {

        @Test
        void the_later_day_counts_wherever_it_stands_and_the_earlier_stays_in_the_report() throws IOException {
            FilledRecord record =
                    first().write("bonding.charger", "0.12").add("bonding.charger", "0.03", "ohm", "2026-03-31");
            Path file = record.in(file("record.json"));
            assertThat(judge(file).exit()).isZero();
            List<String> rows = report("BL-1001", 1).stream()
                    .map(row -> row.stream()
                            .map(cell -> cell == null ? "" : cell.getText())
                            .toList()
                            .toString())
                    .toList();
            assertThat(rows).anyMatch(row -> row.contains("0.12 Ω") && row.contains("earlier, replaced"));
            assertThat(rows).anyMatch(row -> row.contains("0.03 Ω") && row.contains("counts"));
        }

        @Test
        void an_earlier_day_does_not_heal_a_failure() {
            FilledRecord record =
                    first().write("bonding.charger", "0.12").add("bonding.charger", "0.03", "ohm", "2026-03-29");
            assertThat(judge(record.in(file("record.json"))).exit()).isEqualTo(Exit.STOPPED);
        }
    }

    private List<Row> report(String order, int page) throws IOException {
        byte[] xlsx = Files.readAllBytes(folder.resolve("report").resolve(order).resolve("test-report.xlsx"));
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(xlsx))) {
            Sheet sheet = workbook.getSheets().toList().get(page);
            return sheet.read();
        }
    }

    @Test
    void the_answer_for_programs_has_every_test_with_its_readings() throws IOException {
        FilledRecord record = first().write("bonding.charger", "0.12");
        Path file = record.in(file("record.json"));
        Ran ran = boltlore("test-result", file, "--json", "--out", folder.resolve("report"));
        JsonNode order = new ObjectMapper().readTree(ran.out()).get("orders").get(0);
        assertThat(order.get("stops").asBoolean()).isTrue();
        assertThat(order.get("findings"))
                .extracting(finding -> finding.get("kind").asText() + " "
                        + finding.get("subject").asText() + " "
                        + finding.get("data").get("found").asText())
                .containsExactly("test failed bonding.charger 0.12 Ω");
        int readings = 0;
        for (JsonNode row : order.get("reports").get(0).get("tables").get("readings")) {
            readings += row.get("value").isNull() ? 0 : 1;
        }
        assertThat(readings).isEqualTo(record.count());
    }

    @Test
    void the_report_speaks_the_orders_language() throws IOException {
        judge(FilledRecord.of(GERMAN, folder.resolve("sheets")).in(file("record.json")));
        assertThat(report("BL-1011", 0).get(0).getCellText(0)).isEqualTo("Prüfbericht");
    }

    @Nested
    @DisplayName("that cannot be read")
    class CannotBeRead {

        private Ran refused(Path file) {
            Ran ran = judge(file);
            assertThat(ran.exit()).as("%s", ran).isEqualTo(Exit.FAULTS);
            assertThat(ran.err()).doesNotContain("Exception").doesNotContain("\tat ");
            assertThat(folder.resolve("report")).doesNotExist();
            return ran;
        }

        private Path written(String name, String text) throws IOException {
            return Files.writeString(file(name), text);
        }

        @Test
        void another_orders_record_names_the_nearest_order() {
            Ran ran = refused(first().head("order", "BL-1O01").in(file("record.json")));
            assertThat(flat(ran.err())).contains("a record of order BL-1O01").contains("Did you mean 'BL-1001'?");
        }

        @Test
        void the_record_of_another_order_in_the_catalogue_is_held_against_that_order() {
            FilledRecord first = first();
            assertThat(refused(first.head("order", "BL-1002").in(file("record.json")))
                            .err())
                    .contains("a record with the limits L");

            String limits = FilledRecord.of("catalog/orders/bl-1002.json", folder.resolve("sheets"))
                    .head("limits");
            Ran ran = judge(first.head("limits", limits).in(file("record.json")));
            assertThat(ran.exit()).isEqualTo(Exit.STOPPED);
            assertThat(ran.out()).contains("BL-1002, ").contains("Not passed: ").contains("Reading of no test: ");
        }

        @Test
        void an_order_that_something_stops() {
            Ran ran = refused(first().head("order", "BL-1006").in(file("record.json")));
            assertThat(flat(ran.err())).contains("order BL-1006, whose sheets are stopped");
        }

        @Test
        void other_limits() {
            Ran ran = refused(first().head("limits", "L0123456789ab").in(file("record.json")));
            assertThat(flat(ran.err()))
                    .contains("a record with the limits L0123456789ab")
                    .contains("--catalogue");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {
                    "",
                    "order,box,value\nBL-1001,bonding.charger,1\n",
                    "order,limits,box,value,unit,instrument,by,on\n",
                    "order,limits,box,value,unit,instrument,by,on\nBL-1001,L1,\"bonding.charger,1,ohm"
                })
        void a_table_that_is_empty_cut_off_or_another(String text) throws IOException {
            refused(written("record.csv", text));
        }

        @ParameterizedTest
        @ValueSource(strings = {"", "{", "[]", "{\"order\": \"BL-1001\", \"limits\": \"L1\", \"readings\": []}", "nul"})
        void json_that_is_empty_cut_off_or_another(String text) throws IOException {
            refused(written("record.json", text));
        }

        @Test
        void a_number_with_an_absurd_exponent_is_only_a_value_that_cannot_be_judged() throws IOException {
            String text = Files.readString(first().in(file("record.json")));
            String spoilt = text.replaceFirst("\"value\" : \"[^\"]*\"", "\"value\" : 1e99999999");
            Ran ran = judge(written("spoilt.json", spoilt));
            assertThat(ran.exit()).as("%s", ran).isIn(Exit.STOPPED, Exit.FAULTS);
            assertThat(ran.err()).doesNotContain("Exception");
        }

        @Test
        void letters_that_are_not_utf_8() throws IOException {
            byte[] latin = "order;limits;box;value;unit;instrument;by;on\nBL-1001;L1;bonding;1;ohm;7;Müller;1.1.2026\n"
                    .getBytes(StandardCharsets.ISO_8859_1);
            Files.write(file("record.csv"), latin);
            assertThat(flat(refused(file("record.csv")).err())).contains("Save it again as UTF-8.");
        }

        @Test
        void a_workbook_instead_of_its_table() throws IOException {
            first();
            Path xlsx = folder.resolve("sheets/BL-1001/end-of-line-test.xlsx");
            Ran ran = refused(Files.copy(xlsx, file("record.csv")));
            assertThat(flat(ran.err())).contains("a workbook or zip archive").contains("Save the table as CSV");
        }

        @Test
        void more_megabytes_than_any_record_has() throws IOException {
            Files.write(file("record.csv"), new byte[32 * 1024 * 1024 + 1]);
            assertThat(refused(file("record.csv")).err()).contains("at most 8 MB");
        }

        @Test
        void a_file_that_is_not_there_and_a_folder() {
            refused(file("nowhere.csv"));
            refused(folder);
        }
    }
}
