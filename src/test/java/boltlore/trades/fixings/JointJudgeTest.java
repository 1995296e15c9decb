package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts.Into;
import boltlore.findings.Finding;
import boltlore.findings.Severity;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
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
    void a_bolt_goes_into_a_hole_of_its_own_thread() {
        assertThat(says(Jointed.with("25").tapped("M8"))).isEmpty();
        assertThat(says(Jointed.with("25").tapped("M10")))
                .containsExactly(
                        "Frame: the bolts have thread M8, what they go into has M10. They cannot be screwed in.");
    }

    @Test
    void each_bolt_has_a_nut_where_it_goes_into_nuts() {
        assertThat(says(Jointed.with("25").into(Into.NUT, "10", null).nut("8"))).isEmpty();
        assertThat(says(Jointed.with("25").into(Into.NUT, "10", null).nut("8").bolts(2)))
                .containsExactly("Frame: 2 bolts of M8 go into nuts, and 1 nuts of that thread come with them.");
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

    /** M8 takes 8 mm of nut and two threads of 1.25 mm; the next longer bolt is 5 or 10 mm longer (ISO 888, from memory). */
    @Test
    void a_bolt_far_longer_than_its_nut_sticks_out() {
        assertThat(Jointed.with("50.5").into(Into.NUT, "30", null).findings()).isEmpty();
        assertThat(Jointed.with("50.6").into(Into.NUT, "30", null).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.BOLT_TOO_LONG_FOR_NUT);
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
    void bolts_without_a_torque_stop_the_order_where_they_hold_what_is_signed_for() {
        Fixing fixing = new Fixing("M8", BigDecimal.valueOf(25), "8.8", null, null, null);

        assertThat(Jointed.of(fixing).safety().securedBy("wire").findings())
                .singleElement()
                .satisfies(found -> {
                    assertThat(found.kind()).isEqualTo(FixingFinding.SAFETY_BOLT_WITHOUT_TORQUE);
                    assertThat(found.severity()).isEqualTo(Severity.STOP);
                });
    }

    /** FA-26, a table after VDI 2230: M8, 8.8, friction 0.12 takes 24.6 Nm; 24.56 Nm by formula. */
    @ParameterizedTest
    @CsvSource({
        "2.46, TORQUE_FAR_TOO_LOW",
        "13, TORQUE_FAR_TOO_LOW",
        "19.6, TORQUE_FAR_TOO_LOW",
        "19.7, TORQUE_TOO_LOW",
        "22.1, TORQUE_TOO_LOW",
        "22.2,",
        "24.6,",
        "25.0,",
        "25.1, TORQUE_TOO_HIGH",
        "27.0, TORQUE_TOO_HIGH",
        "27.1, TORQUE_FAR_TOO_HIGH",
        "27.9, TORQUE_FAR_TOO_HIGH"
    })
    void a_torque_lies_within_its_window(String torqueNm, @Nullable FixingFinding kind) {
        assertThat(Jointed.of(torqued(torqueNm)).findings())
                .extracting(Finding::kind)
                .containsExactlyElementsOf(kind == null ? List.of() : List.of(kind));
    }

    @Test
    void a_torque_far_off_says_what_it_clamps_with_and_what_is_right() {
        assertThat(says(Jointed.of(torqued("2.46"))))
                .containsExactly(
                        "Frame: 2.46 Nm is far below the 24.6 Nm computed for thread, class and friction: the bolts"
                                + " clamp with 1.9 kN. Correct it, or name the drawing that asks for it under 'torque' in"
                                + " joints.json.");
        // By hand: 27.9 / 24.55 × 90 % = 102 % of yield; 27.9 / 24.55 × 18.63 kN = 21.2 kN.
        assertThat(says(Jointed.of(torqued("27.9"))))
                .containsExactly(
                        "Frame: 27.9 Nm uses 102 % of the bolt's yield, and 90 % are allowed: 24.6 Nm computed."
                                + " Preload 21.2 kN, proof load 21.2 kN.");
    }

    @Test
    void a_joint_of_soft_material_is_tightened_as_its_drawing_says() {
        Jointed soft = Jointed.of(torqued("24.6")).own("", "9");

        assertThat(soft.findings()).isEmpty();
        assertThat(soft.joint().torqueNm()).isEqualByComparingTo("9");
        assertThat(soft.joint().torqueFrom()).isEqualTo("drawing T-1, issue A");
        assertThat(soft.joint().preloadNewton())
                .hasValueSatisfying(newton -> assertThat(newton.intValue()).isBetween(6_800, 6_850));
    }

    @Test
    void but_no_drawing_takes_a_bolt_beyond_its_yield_and_bolts_of_another_thread_keep_their_table() {
        assertThat(Jointed.of(torqued("24.6")).own("", "40").findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_FAR_TOO_HIGH);
        assertThat(Jointed.of(torqued("9")).own("M6", "9").findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_FAR_TOO_LOW);
    }

    @Test
    @DisplayName("what a self-locking nut takes comes on top: FAA AC 43.13-1B, 7-40 d, adds the drag to the torque")
    void self_locking() {
        BoltedJoint locked = Jointed.of(torqued("24.6")).selfLocking("6").joint();

        assertThat(locked.prevailingNm()).isEqualByComparingTo("6");
        assertThat(locked.wrenchNm()).isEqualByComparingTo("30.6");
        assertThat(locked.torqueNm()).isEqualByComparingTo("24.6");
        assertThat(Jointed.of(torqued("24.6")).nut("8").joint().wrenchNm()).isEqualByComparingTo("24.6");
        assertThat(Jointed.of(torqued("24.6")).selfLocking("6").findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"M7, 8.8", "7/16-18 UNF, SAE grade 5", "M8, A2-70", "1/2-13 NPT, grade 5"})
    void a_thread_or_class_that_is_not_known_is_told_and_not_passed_over(String thread, String propertyClass) {
        Fixing fixing = new Fixing(
                thread, BigDecimal.valueOf(25), propertyClass, new BigDecimal("90"), "table", new BigDecimal("0.12"));

        assertThat(Jointed.of(fixing).findings()).singleElement().satisfies(found -> {
            assertThat(found.kind()).isEqualTo(FixingFinding.BOLT_NOT_KNOWN);
            assertThat(found.severity()).isEqualTo(Severity.CHECK);
        });
    }

    private static Fixing torqued(String torqueNm) {
        return new Fixing(
                "M8", BigDecimal.valueOf(25), "8.8", new BigDecimal(torqueNm), "table", new BigDecimal("0.12"));
    }

    @Test
    void a_torque_without_table_or_friction_is_wrong() {
        Fixing noTable =
                new Fixing("M8", BigDecimal.valueOf(25), "8.8", new BigDecimal("24.6"), null, new BigDecimal("0.12"));
        Fixing noFriction = new Fixing("M8", BigDecimal.valueOf(25), "8.8", BigDecimal.TEN, "table", null);

        assertThat(Jointed.of(noTable).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_WITHOUT_TABLE);
        assertThat(Jointed.of(noFriction).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_WITHOUT_TABLE);
    }

    @Test
    void a_bolt_of_an_unknown_thread_is_not_measured() {
        Fixing inch = new Fixing("3/8-18", BigDecimal.ONE, "8.8", BigDecimal.TEN, "table", new BigDecimal("0.12"));

        assertThat(Jointed.of(inch).into(Into.STEEL, "10", "15").findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.BOLT_NOT_KNOWN);
    }

    @Test
    void a_bolt_in_a_rivet_nut_takes_the_thread_of_one_in_steel_and_does_not_bottom() {
        assertThat(says(Jointed.with("18").into(Into.RIVET_NUT, "10", "5"))).isEmpty();
        assertThat(says(Jointed.with("17.9").into(Into.RIVET_NUT, "10", null)))
                .containsExactly("Frame: only 7.9 mm of thread hold in a rivet nut. At least 8 mm are needed.");
    }

    @Test
    void a_container_heavier_than_all_together_has_no_count() {
        assertThat(CountByWeight.count(BigDecimal.ONE, BigDecimal.TEN, BigDecimal.ONE))
                .isEmpty();
        assertThat(CountByWeight.count(BigDecimal.TEN, BigDecimal.TEN, BigDecimal.ONE))
                .contains(0);
    }

    /** 24.6 Nm for M8, 8.8 at friction 0.12, after VDI 2230: the figure of the published tables that the check values hold. */
    @Test
    void the_last_round_is_judged_as_any_torque_is() {
        assertThat(Jointed.with("25").stages(List.of("10", "24.6"), List.of()).findings())
                .isEmpty();
        assertThat(Jointed.with("25").stages(List.of("24.6", "28"), List.of()).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_FAR_TOO_HIGH);
        assertThat(Jointed.with("25").stages(List.of("5", "10"), List.of()).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.TORQUE_FAR_TOO_LOW);
    }

    @Test
    void an_angle_is_left_to_the_engineer() {
        Jointed turned = Jointed.with("25").stages(List.of("10"), List.of("45", "45"));

        assertThat(says(turned))
                .singleElement()
                .asString()
                .startsWith("Frame: 10 Nm, then 90° further.")
                .endsWith("for the engineer's judgement.");
        assertThat(turned.joint().preloadNewton()).isEmpty();
    }

    @Test
    void a_sequence_numbers_as_many_bolts_as_there_are() {
        assertThat(Jointed.with("25")
                        .bolts(4)
                        .stages(List.of("24.6"), List.of(), 1, 3, 2, 4)
                        .findings())
                .isEmpty();
        assertThat(Jointed.with("25")
                        .bolts(6)
                        .stages(List.of("24.6"), List.of(), 1, 3, 2, 4)
                        .findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.SEQUENCE_OF_OTHER_COUNT);
    }

    /** ISO 7089 washers go with the bolt's own thread: common practice, no source. */
    @Test
    void each_bolt_has_a_washer_of_its_own_size_under_its_head() {
        assertThat(says(Jointed.with("25").bolts(2).washers("M8", 2))).isEmpty();
        assertThat(says(Jointed.with("25").bolts(2).washers("M8", 1)))
                .singleElement()
                .asString()
                .startsWith("Frame: 2 bolts of M8 and 1 washers. ");
        assertThat(Jointed.with("25").washers("M10", 1).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.WASHER_OF_OTHER_SIZE);
    }

    @Test
    void a_bolt_without_a_washer_stops_where_it_is_signed_for_and_one_with_a_flanged_head_needs_none() {
        Fixing flanged = new Fixing(
                "M8",
                BigDecimal.valueOf(25),
                "8.8",
                new BigDecimal("24.6"),
                "table",
                new BigDecimal("0.12"),
                null,
                null,
                Fixing.Washer.FITTED);
        assertThat(Jointed.with("25").washers("M8", 0).findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.WASHERS_TOO_FEW);
        assertThat(Jointed.with("25")
                        .safety()
                        .securedBy("wire")
                        .washers("M8", 0)
                        .findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.SAFETY_WASHERS_TOO_FEW);
        assertThat(Jointed.of(flanged).washers("M8", 0).findings()).isEmpty();
    }

    /** FAA AC 43.13-1B, 7-37 and 7-64 want every such fastening safetied in one way; from memory. */
    @Test
    void what_is_signed_for_is_kept_from_coming_loose_by_one_means() {
        assertThat(Jointed.with("25").findings()).isEmpty();
        assertThat(Jointed.with("25").safety().findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.NOT_SECURED);
        assertThat(Jointed.with("25").safety().securedBy("locking plate").findings())
                .isEmpty();
        assertThat(Jointed.with("25").safety().selfLocking("6").findings()).isEmpty();
        assertThat(Jointed.of(locked()).safety().findings()).isEmpty();
        assertThat(Jointed.of(locked()).safety().selfLocking("6").findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.SECURED_TWICE);
    }

    private static Fixing locked() {
        return new Fixing(
                "M8",
                BigDecimal.valueOf(25),
                "8.8",
                new BigDecimal("24.6"),
                "table",
                new BigDecimal("0.12"),
                Wording.english("medium strength"),
                null);
    }
}
