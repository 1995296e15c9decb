package boltlore.checking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Fixing;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TorquesTest {

    private static final String ALONE = "part FX-1: torque without its table or friction";
    private static final String LOW = "part FX-1: torque far below its property class";
    private static final String HIGH = "part FX-1: torque above its property class";

    @ParameterizedTest
    @CsvSource({"24.6, false", "28.2, false", "28.3, true", "246, true"})
    @DisplayName("M8, class 8.8, friction 0.12: 24.55 Nm by formula and at most 15 % more")
    void at_most_15_percent_more(String torqueNm, boolean doubtful) {
        assertThat(Remarked.in(bolt("FX-1", "M8", torqueNm))).isEqualTo(doubtful ? List.of(HIGH) : List.of());
    }

    @ParameterizedTest
    @CsvSource({"12.3, false", "12.2, true", "2.5, true"})
    @DisplayName("and not less than half of it: 2.5 is in kgm")
    void not_less_than_half(String torqueNm, boolean doubtful) {
        assertThat(Remarked.in(bolt("FX-1", "M8", torqueNm))).isEqualTo(doubtful ? List.of(LOW) : List.of());
    }

    @Test
    void more_friction_takes_more_torque() {
        assertThat(remarks(fixing("M8", "8.8", "34.2", "0.16"))).isEmpty();
        assertThat(remarks(fixing("M8", "8.8", "34.4", "0.16"))).containsExactly(HIGH);
    }

    @Test
    @DisplayName("a higher class takes more torque: 36.1 Nm for M8, 10.9")
    void higher_class() {
        assertThat(remarks(fixing("M8", "10.9", "41", "0.12"))).isEmpty();
        assertThat(remarks(fixing("M8", "10.9", "42", "0.12"))).containsExactly(HIGH);
    }

    @Test
    void a_class_or_thread_that_is_not_known_is_not_judged() {
        assertThat(remarks(fixing("M8", "A2-70", "99", "0.12"))).isEmpty();
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
