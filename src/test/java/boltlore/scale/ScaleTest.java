package boltlore.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The table of how work grows with a catalogue's size")
class ScaleTest {

    @Test
    void has_each_kind_of_work_for_a_catalogue_that_is_made_up_and_really_worked_on() throws Exception {
        Scale.Measured measured = Scale.measure(new Scale.Size(60, 6));
        assertThat(measured.lines()).isBetween(60, 90);
        assertThat(measured.milliseconds().keySet())
                .containsExactly(
                        "read",
                        "check",
                        "first look",
                        "look, 95 of 100",
                        "rules",
                        "resolve",
                        "prove",
                        "kit, a process");
        assertThat(measured.milliseconds().get("kit, a process")).isGreaterThan(100);
    }

    @Test
    void shows_the_exponent_by_which_time_grows() {
        assertThat(Scale.table(List.of(measured(100, 10), measured(1_000, 100), measured(10_000, 10_000))))
                .isEqualToNormalizingNewlines("""
                        milliseconds                              read
                        100 lines, 1 options                      10.0
                          slope                                   1.00
                        1,000 lines, 1 options                   100.0
                          slope                                   2.00
                        10,000 lines, 1 options               10,000.0
                        """);
    }

    @Test
    void says_so_where_a_proof_was_not_decided_in_its_time() {
        assertThat(Scale.table(List.of(measured(100, 10), measured(1_000, Double.NaN))))
                .contains("not decided")
                .contains("  slope                                      -");
    }

    private static Scale.Measured measured(int lines, double milliseconds) {
        return new Scale.Measured(new Scale.Size(lines, 1), lines, Map.of("read", milliseconds));
    }
}
