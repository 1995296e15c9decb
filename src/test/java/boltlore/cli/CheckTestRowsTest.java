package boltlore.cli;

import static boltlore.cli.Ran.boltlore;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Checking a catalogue finds of the end-of-line tests")
class CheckTestRowsTest {

    private static final String TESTS = "families/pannier-van/tests.json";

    @TempDir
    private Path folder;

    private String check(String from, String to) throws IOException {
        Path catalogue = ChangedCatalogue.in(folder, TESTS, from, to);
        return boltlore("check", catalogue).out().replaceAll("\\s+", " ");
    }

    /** Every connector of a power circuit is in the loop: ISO 6469-3, protection against opened connectors; from memory. */
    @ParameterizedTest
    @DisplayName("high-voltage connectors of which nobody tries whether they open the interlock")
    @CsvSource({"contactors", "second-string-contactors", "dc-contactors", "junction-box", "drive-unit"})
    void interlock(String position) throws IOException {
        String rows =
                "\"contactors\", \"second-string-contactors\", \"dc-contactors\", \"junction-box\", \"drive-unit\", \"converter\", \"charger\", \"compressor\", \"heater-unit\"], \"method\": {\"en\": \"Pull";
        assertThat(check(rows, rows.replace("\"" + position + "\", ", "")))
                .contains("position pannier-van/" + position + ": found no test of the interlock there")
                .contains("To check: 1 in the data");
    }

    @ParameterizedTest
    @DisplayName("contactors that part what lies behind them from every insulation test")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"at\": [\"contactors\", \"second-string-contactors\"], \"method\": {\"en\": \"Contactors open, on | \"at\": [\"contactors\"], \"method\": {\"en\": \"Contactors open, on | second-string-contactors",
                "\"at\": [\"contactors\", \"second-string-contactors\"], \"method\": {\"en\": \"Contactors open, on | \"at\": [\"second-string-contactors\"], \"method\": {\"en\": \"Contactors open, on | contactors",
                "\"at\": [\"dc-contactors\"], \"method\": {\"en\": \"DC charging contactors open | \"at\": [\"junction-box\"], \"method\": {\"en\": \"DC charging contactors open | dc-contactors"
            })
    void insulation(String from, String to, String position) throws IOException {
        assertThat(check(from, to))
                .contains("position pannier-van/" + position + ": found contactors, and no insulation test there")
                .contains("To check: 1 in the data");
    }

    /** The sign on what covers live parts: UN Regulation 100, 5.1.1.5; ISO 7010, W012. */
    @ParameterizedTest
    @DisplayName("high-voltage parts without the sign for voltage")
    @CsvSource({"contactors", "second-string-contactors", "dc-contactors", "converter"})
    void sign(String position) throws IOException {
        String at =
                "\"at\": [\"battery-box\", \"rear-box\", \"contactors\", \"second-string-contactors\", \"dc-contactors\", \"junction-box\", \"drive-unit\", \"converter\",";
        assertThat(check(at, at.replace(" \"" + position + "\",", "")))
                .contains("position pannier-van/" + position + ": found no label with the sign for voltage there")
                .contains("To check: 1 in the data");
    }

    @Test
    void a_part_whose_own_label_has_the_sign_needs_no_second() throws IOException {
        assertThat(check("\"ISO 7010 W012\"", "\"ISO 7010 W001\""))
                .contains("position pannier-van/service-disconnect: found no label with the sign for voltage there");
    }

    @ParameterizedTest
    @DisplayName("a circuit of coolant that a test or a label of the others leaves out")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"motor-tank\", \"battery-tank\", \"heater-tank\"], \"method\" | \"motor-tank\", \"battery-tank\"], \"method\" | test pannier-van/cooling-frost: found none in circuit 'heater-coolant'",
                "\"battery-pump\", \"heater-pump\"] | \"battery-pump\"] | test pannier-van/cooling-pump: found none in circuit 'heater-coolant'"
            })
    void circuits(String from, String to, String found) throws IOException {
        assertThat(check(from, to)).contains(found).contains("To check: 1 in the data");
    }

    @Test
    void but_not_one_of_a_test_that_is_made_in_one_circuit_only() throws IOException {
        assertThat(check(
                        "\"motor-tank\", \"battery-tank\", \"heater-tank\"], \"method\"",
                        "\"motor-tank\"], \"method\""))
                .contains("The data is consistent.");
    }
}
