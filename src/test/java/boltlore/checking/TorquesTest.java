package boltlore.checking;

import static boltlore.sketch.PartSketch.bolt;
import static boltlore.sketch.PartSketch.bought;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Fixing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TorquesTest {

    private static final String ALONE = "part FX-1: torque without its table or friction";
    private static final String LOW = "part FX-1: torque below its property class";
    private static final String FAR_LOW = "part FX-1: torque far below its property class";
    private static final String HIGH = "part FX-1: torque above its property class";
    private static final String FAR_HIGH = "part FX-1: torque far above its property class";
    private static final String UNKNOWN = "part FX-1: bolt of a thread or class that is not known";

    /** FA-26, a table after VDI 2230, says 24.6 Nm. */
    @ParameterizedTest
    @CsvSource({
        "24.6,",
        "25.0,",
        "25.1, HIGH",
        "27.0, HIGH",
        "27.1, FAR_HIGH",
        "246, FAR_HIGH",
        "22.2,",
        "22.1, LOW",
        "19.7, LOW",
        "19.6, FAR_LOW",
        "2.5, FAR_LOW"
    })
    @DisplayName("M8, class 8.8, friction 0.12: 24.55 Nm by formula, from 90 to 102 % of it")
    void within_its_window(String torqueNm, @Nullable String doubt) {
        Map<String, String> said = Map.of("HIGH", HIGH, "FAR_HIGH", FAR_HIGH, "LOW", LOW, "FAR_LOW", FAR_LOW);
        assertThat(Remarked.in(bolt("FX-1", "M8", torqueNm)))
                .isEqualTo(doubt == null ? List.of() : List.of(said.getOrDefault(doubt, "")));
    }

    @Test
    void more_friction_takes_more_torque() {
        assertThat(remarks(fixing("M8", "8.8", "30.3", "0.16"))).isEmpty();
        assertThat(remarks(fixing("M8", "8.8", "30.6", "0.16"))).containsExactly(HIGH);
    }

    @Test
    @DisplayName("a higher class takes more torque: 36.1 Nm for M8, 10.9")
    void higher_class() {
        assertThat(remarks(fixing("M8", "10.9", "36.7", "0.12"))).isEmpty();
        assertThat(remarks(fixing("M8", "10.9", "36.9", "0.12"))).containsExactly(HIGH);
    }

    @Test
    void a_class_or_thread_that_is_not_known_is_told() {
        assertThat(remarks(fixing("M8", "A2-70", "99", "0.12"))).containsExactly(UNKNOWN);
        assertThat(remarks(fixing("M7", "8.8", "99", "0.12"))).containsExactly(UNKNOWN);
        assertThat(remarks(fixing("7/16-21", "grade 5", "99", "0.12"))).containsExactly(UNKNOWN);
        assertThat(Remarked.in(bought("FX-1").fixing(new Fixing("M8", null, "8", null, null, null))))
                .isEmpty();
    }

    /** 24.55 Nm of 8.8 by the yields of ISO 898-1: × 240 / 640 = 9.2 Nm for 4.6, × 420 / 640 = 16.1 Nm for 5.8. */
    @ParameterizedTest
    @CsvSource({
        "4.6, 9.2,",
        "4.6, 10.2, FAR_HIGH",
        "4.8, 13.0,",
        "5.6, 11.5,",
        "5.8, 16.1,",
        "5.8, 24.6, FAR_HIGH",
        "6.8, 18.4,"
    })
    void a_bolt_of_softer_steel_takes_less_torque(String propertyClass, String torqueNm, @Nullable String doubt) {
        assertThat(remarks(fixing("M8", propertyClass, torqueNm, "0.12")))
                .isEqualTo(doubt == null ? List.of() : List.of(FAR_HIGH));
    }

    /** By hand for SAE J429 grade 5 and friction 0.12: 67.7 Nm. */
    @Test
    void an_inch_bolt_is_judged_like_a_metric_one() {
        assertThat(remarks(fixing("7/16-20 UNF", "SAE J429 grade 5", "68", "0.12")))
                .isEmpty();
        assertThat(remarks(fixing("7/16-20 UNF", "SAE J429 grade 5", "6.8", "0.12")))
                .containsExactly(FAR_LOW);
    }

    @Test
    void a_self_locking_nut_says_what_it_takes_to_turn() {
        Fixing plain = new Fixing("M8", null, "8", null, null, null);
        Fixing locking = new Fixing(
                "M8", null, "8", null, null, null, null, new Fixing.Prevailing(new BigDecimal("6"), "nut table"));

        assertThat(Remarked.in(bought("FX-1").named("en", "Self-locking nut M8").fixing(plain)))
                .containsExactly("part FX-1: self-locking nut without its prevailing torque");
        assertThat(Remarked.in(bought("FX-1").named("en", "Self-locking nut M8").fixing(locking)))
                .isEmpty();
        assertThat(Remarked.in(bought("FX-1").named("en", "Nut M8").fixing(plain)))
                .isEmpty();
    }

    @Test
    void a_torque_never_stands_alone() {
        assertThat(remarks(new Fixing("M8", null, "8.8", new BigDecimal("24.6"), null, new BigDecimal("0.12"))))
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
