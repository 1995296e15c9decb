package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Fixing;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By hand, M8, 8.8, 24.6 Nm, friction 0.12: preload 18.66 kN, after a torque wrench (1.8) 10.37 kN a bolt. Four of them with a
 * friction of 0.15 in one face hold 6.22 kN.
 */
@DisplayName("A joint holds what shears it, and its parts bear the heads")
class ClampJudgeTest {

    private static List<String> kinds(Jointed joint) {
        return joint.findings().stream().map(found -> found.kind().toString()).toList();
    }

    private static Jointed sheared(String newton, int interfaces) {
        return Jointed.with("25").sheared(4, newton, "0.15", interfaces, false);
    }

    @ParameterizedTest
    @CsvSource({"3450, 1.80", "6220, 1.00", "2000, 3.11"})
    void friction_holds_so_many_times_the_load(String newton, String safety) {
        ClampedJoint joint =
                ClampedJoint.among(List.of(sheared(newton, 1).joint())).get(0);

        assertThat(joint.slipSafety())
                .hasValueSatisfying(
                        found -> assertThat(found).isCloseTo(new BigDecimal(safety), within(new BigDecimal("0.005"))));
    }

    @Test
    void a_joint_that_slips_is_stopped_and_one_with_a_small_margin_is_looked_at() {
        assertThat(kinds(sheared("3400", 1))).isEmpty();
        assertThat(kinds(sheared("3500", 1))).containsExactly("SLIP_MARGIN_SMALL");
        assertThat(kinds(sheared("6200", 1))).containsExactly("SLIP_MARGIN_SMALL");
        assertThat(kinds(sheared("6300", 1))).containsExactly("JOINT_SLIPS");
        assertThat(kinds(sheared("6300", 2))).isEmpty();
    }

    @Test
    void a_first_estimate_is_for_the_engineers_judgement_and_stops_nothing() {
        Jointed guessed = Jointed.with("25").sheared(4, "9000", "0.15", 1, true);

        assertThat(guessed.findings()).singleElement().satisfies(found -> {
            assertThat(found.severity()).isEqualTo(Severity.CHECK);
            assertThat(found.says()).contains("0.69 times", "For the engineer's judgement (load sheet).");
        });
    }

    /**
     * Limits as published after VDI 2230: S235 490 MPa, aluminium AW-6082 F31 260 MPa. By hand: ring of a hexagon head M8 on a
     * 9 mm hole, π/4 (11.6² − 9²) = 42.07 mm²; 18 661 N / 42.07 mm² = 443.6 MPa.
     */
    @ParameterizedTest
    @CsvSource({"490,", "444,", "443, BEARING_PRESSURE_HIGH", "260, BEARING_PRESSURE_HIGH"})
    void what_a_head_presses_on_bears_it(String limitMpa, @Nullable String kind) {
        assertThat(kinds(Jointed.with("25").bears(limitMpa, false)))
                .isEqualTo(kind == null ? List.of() : List.of(kind));
    }

    @Test
    void a_pressure_by_a_first_estimate_is_looked_at() {
        assertThat(Jointed.with("25").bears("260", true).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.BEARING_ESTIMATE_HIGH);
    }

    @Test
    void less_torque_presses_and_holds_less() {
        Jointed soft = Jointed.with("25").own("", "12").bears("260", false).sheared(4, "2500", "0.15", 1, false);

        // By hand: 12 / 24.6 of 6.22 kN is 3.03 kN, 1.21 times 2.5 kN; 216 MPa.
        assertThat(kinds(soft)).containsExactly("SLIP_MARGIN_SMALL");
    }

    @Test
    void a_joint_without_a_known_preload_is_told_and_not_passed_over() {
        Jointed unknown = Jointed.of(new Fixing(
                        "M8", BigDecimal.valueOf(25), "A2-70", new BigDecimal("15"), "table", new BigDecimal("0.12")))
                .sheared(4, "3400", "0.15", 1, false)
                .bears("490", false);

        assertThat(kinds(unknown)).containsExactly("BOLT_NOT_KNOWN", "CLAMP_NOT_KNOWN");
    }
}
