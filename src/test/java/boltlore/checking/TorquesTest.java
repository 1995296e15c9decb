package boltlore.checking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Fixing;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TorquesTest {

    private static final String ALONE = "part FX-1: torque without its table or friction";
    private static final String HIGH = "part FX-1: torque above its property class";

    static Stream<CheckRow> torques() {
        String[] ids =
                IntStream.rangeClosed(13, 33).mapToObj(row -> "FA-" + row).toArray(String[]::new);
        return CheckTable.rows("fasteners.csv", ids);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("torques")
    @DisplayName("The torques are those of the tightening table")
    void published_torques(CheckRow row) {
        Fixing fixing = fixing(row.text("thread"), row.text("property_class"), "1", row.text("friction_coefficient"));
        assertThat(TorqueTable.torqueNm(fixing))
                .hasValueSatisfying(
                        torque -> assertThat(torque).isEqualByComparingTo(row.number("expected_torque_nm")));
    }

    @ParameterizedTest
    @CsvSource({"24.6, false", "28.29, false", "28.3, true", "246, true"})
    @DisplayName("M8, class 8.8, friction 0.12: 24.6 Nm and at most 15 % more")
    void at_most_15_percent_more(String torqueNm, boolean doubtful) {
        assertThat(Remarked.in(bolt("FX-1", "M8", torqueNm))).isEqualTo(doubtful ? List.of(HIGH) : List.of());
    }

    @Test
    void a_friction_that_the_table_has_not_is_held_against_the_largest() {
        assertThat(remarks(fixing("M8", "8.8", "31.3", "0.16"))).isEmpty();
        assertThat(remarks(fixing("M8", "8.8", "31.4", "0.16"))).containsExactly(HIGH);
    }

    @Test
    void a_class_or_thread_that_the_table_has_not_is_not_judged() {
        assertThat(remarks(fixing("M8", "10.9", "36", "0.12"))).isEmpty();
        assertThat(remarks(fixing("M7", "8.8", "99", "0.12"))).isEmpty();
    }

    @Test
    void a_torque_never_stands_alone() {
        assertThat(remarks(new Fixing("M8", null, "8.8", new BigDecimal("20"), null, new BigDecimal("0.12"))))
                .containsExactly(ALONE);
        assertThat(remarks(fixing("M8", "8.8", "20", null))).containsExactly(ALONE);
        assertThat(Remarked.in(bolt("FX-1", "M8", null))).isEmpty();
    }

    private static List<String> remarks(Fixing fixing) {
        return Remarked.in(bought("FX-1").fixing(fixing));
    }

    private static Fixing fixing(String thread, String propertyClass, String torqueNm, @Nullable String friction) {
        return new Fixing(
                thread,
                null,
                propertyClass,
                new BigDecimal(torqueNm),
                "tightening table",
                friction == null ? null : new BigDecimal(friction));
    }
}
