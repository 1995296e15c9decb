package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts.Into;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointJudgeTest {

    private static List<String> says(Jointed joint) {
        return joint.findings().stream().map(Finding::says).toList();
    }

    @ParameterizedTest
    @CsvSource({"STEEL, 18, 17.9, 8 mm", "CAST_IRON, 20, 19.9, 10 mm", "ALUMINIUM, 22, 21.9, 12 mm"})
    void a_tapped_hole_needs_its_length_of_thread(Into into, String enough, String tooShort, String least) {
        assertThat(says(Jointed.with(enough).into(into, "10", null))).isEmpty();
        assertThat(says(Jointed.with(tooShort).into(into, "10", null)))
                .singleElement()
                .asString()
                .endsWith("At least " + least + " are needed.");
    }

    @Test
    void a_nut_is_at_least_as_strong_as_its_bolt() {
        assertThat(says(Jointed.with("25").nut("8"))).isEmpty();
        assertThat(says(Jointed.with("25").nut("10"))).isEmpty();
        assertThat(says(Jointed.with("25").nut("6")))
                .containsExactly("Frame: nuts of class 6 on bolts of class 8.8. They take class 8 at least.");
    }

    @Test
    void a_bolt_that_bottoms_does_not_clamp() {
        assertThat(says(Jointed.with("25").into(Into.STEEL, "10", "15"))).isEmpty();
        assertThat(says(Jointed.with("25.1").into(Into.STEEL, "10", "15")))
                .containsExactly(
                        "Frame: the bolt reaches 15.1 mm into a thread of 15 mm, so it bottoms before it clamps.");
    }

    @Test
    void a_bolt_shorter_than_what_it_clamps_is_wrong() {
        assertThat(Jointed.with("25").into(Into.NUT, "30", null).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.BOLT_TOO_SHORT_FOR_NUT);
    }

    @Test
    void bolts_without_a_torque_are_looked_at() {
        Fixing fixing = new Fixing("M8", BigDecimal.valueOf(25), "8.8", null, null, null);

        assertThat(Jointed.of(fixing).findings()).singleElement().satisfies(found -> {
            assertThat(found.kind()).isEqualTo(FixingFinding.BOLT_WITHOUT_TORQUE);
            assertThat(found.subject()).isEqualTo("frame");
            assertThat(found.severity()).isEqualTo(Severity.CHECK);
        });
    }

    @Test
    void a_torque_that_stretches_the_bolt_is_wrong() {
        assertThat(says(Jointed.of(torqued("27.9")))).isEmpty();
        assertThat(says(Jointed.of(torqued("28.1"))))
                .containsExactly("Frame: the torque gives 21.3 kN of preload, above the bolt's proof load of 21.2 kN.");
    }

    private static Fixing torqued(String torqueNm) {
        return new Fixing(
                "M8", BigDecimal.valueOf(25), "8.8", new BigDecimal(torqueNm), "table", new BigDecimal("0.12"));
    }

    @Test
    void a_torque_without_table_or_friction_is_wrong() {
        Fixing noTable = new Fixing("M8", BigDecimal.valueOf(25), "8.8", BigDecimal.TEN, null, new BigDecimal("0.12"));
        Fixing noFriction = new Fixing("M8", BigDecimal.valueOf(25), "8.8", BigDecimal.TEN, "table", null);

        assertThat(Jointed.of(noTable).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_WITHOUT_TABLE);
        assertThat(Jointed.of(noFriction).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_WITHOUT_TABLE);
    }

    @Test
    void a_thread_that_is_not_metric_is_not_measured() {
        Fixing inch = new Fixing("3/8-16", BigDecimal.ONE, "8.8", BigDecimal.TEN, "table", new BigDecimal("0.12"));

        assertThat(says(Jointed.of(inch).into(Into.STEEL, "10", "15"))).isEmpty();
    }

    @Test
    void a_container_heavier_than_all_together_has_no_count() {
        assertThat(CountByWeight.count(BigDecimal.ONE, BigDecimal.TEN, BigDecimal.ONE))
                .isEmpty();
        assertThat(CountByWeight.count(BigDecimal.TEN, BigDecimal.TEN, BigDecimal.ONE))
                .contains(0);
    }
}
