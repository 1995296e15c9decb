package boltlore.checking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 6469-4 (crash), UN Regulation 100 (isolation) and IEC 60364-6 (trip) ask for what is tried; clauses from memory. */
class TestsNeededTest {

    private static final String PICKUP = "families/stook-pickup/tests.json";

    @TempDir
    private Path folder;

    private void told(String test, String from, String to, @Nullable String about) throws IOException {
        assertThat(PlantedDemo.remarks(folder, PICKUP, "\"test\": \"" + test + "\"", from, to))
                .filteredOn(remark -> remark.endsWith(Check.TEST_NEEDED.written()))
                .isEqualTo(about == null ? List.of() : List.of(about + ": " + Check.TEST_NEEDED.written()));
    }

    @ParameterizedTest
    @CsvSource({
        "contactors-crash, crash-switch, brake-switch, position stook-pickup/crash-switch",
        "isolation-alarm, isolation-monitor, display, position stook-pickup/isolation-monitor",
        "brake-lamps, brake-switch, display, position stook-pickup/brake-switch",
        "display-lamps, display, work-lamp,"
    })
    void a_test_is_made_where_the_part_stands(String test, String from, String to, @Nullable String about)
            throws IOException {
        told(test, "\"at\": [\"" + from, "\"at\": [\"" + to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "contactors-crash, open, closed, position stook-pickup/crash-switch",
        "drive-forward, forward, reverse, position stook-pickup/selector",
        "tipping, stationary, locked,"
    })
    void it_wants_what_it_must(String test, String from, String to, @Nullable String about) throws IOException {
        told(test, "\"state\": \"" + from, "\"state\": \"" + to, about);
    }

    @ParameterizedTest
    @CsvSource({
        "precharge-time, '\"calculated\": \"precharge-time\", \"withinPercent\": \"40\"', '\"atMost\": \"500\"', family stook-pickup",
        "precharge-time, '\"40\"', '\"30\"',"
    })
    void precharge_is_timed(String test, String from, String to, @Nullable String about) throws IOException {
        told(test, from, to, about);
    }

    @Test
    void it_is_made_in_every_order() throws IOException {
        told(
                "contactors-crash",
                "\"limit\"",
                "\"when\": {\"drive-side\": \"left\"}, \"limit\"",
                "position stook-pickup/crash-switch");
    }

    /** UN Regulation 100 asks for warnings where parts are live; that sheets do is common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "contactors, group stook-pickup/contactors",
        "interlock, group stook-pickup/interlock",
        "charging, group stook-pickup/charging"
    })
    void a_group_on_high_voltage_keeps_its_caution(String group, String about) throws IOException {
        assertThat(PlantedDemo.remarks(
                        folder,
                        PICKUP,
                        "\"group\": \"" + group + "\"",
                        "\"cautions\": [\"high-voltage\"]",
                        "\"cautions\": []"))
                .filteredOn(remark -> remark.endsWith(Check.HIGH_VOLTAGE.written()))
                .containsExactly(about + ": " + Check.HIGH_VOLTAGE.written());
    }
}
