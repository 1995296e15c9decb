package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.logic.Deadline;
import boltlore.proof.Prover;
import boltlore.proof.kinds.Kinds;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a family's files forget or say of nobody:")
class ForgottenDataTest {

    private static final String DRIVING = "families/pannier-van/driving.json";

    @Nested
    class Shafts_without_flanges {

        private static final String SHAFTS = "(?s) \"shafts\": \\[.*?\\n \\],\\n";

        @Test
        void are_told_of_each_shaft() {
            assertThat(demo().rewriting("families/pannier-van/fits.json", text -> text.replaceFirst(SHAFTS, ""))
                            .found(VAN))
                    .hasSize(5)
                    .allMatch(title -> title.startsWith("shaft does not reach: propshaft-")
                            && title.endsWith("(between no flanges)"));
        }

        /** A shaft of another length than its flanges are apart slides, or is told by how much it is short. */
        @ParameterizedTest
        @CsvSource({"340, false", "260, true"})
        void are_another_thing_than_a_shaft_that_is_too_short(int lengthMm, boolean told) {
            assertThat(demo().inPart("pannier-drive", "\"lengthMm\": 320", "\"lengthMm\": " + lengthMm)
                            .found(VAN))
                    .isEqualTo(
                            told
                                    ? List.of("shaft does not reach: propshaft-early-60-kw (" + lengthMm
                                            + " mm, flanges 320 mm apart)")
                                    : List.of());
        }
    }

    /** Worked by hand: 250 W at 12 V are 20.8 A, 230 W are 19.2 A; heater 18 A or 11 + 7 A, and 2 A of the outlet. */
    @Nested
    class A_branch_of_the_12_V_network {

        @ParameterizedTest
        @CsvSource({"250, 0", "230, 2", "50, 3"})
        void is_reckoned_with_all_fused_circuits_behind_it(int watts, int told) {
            assertThat(demo().in(
                                    "families/pannier-van/electrics.json",
                                    "\"feeds\": {\"watts\": \"1000\", \"efficiencyPercent\": \"100\"}",
                                    "\"feeds\": {\"watts\": \"" + watts + "\", \"efficiencyPercent\": \"100\"}")
                            .found(VAN))
                    .hasSize(told)
                    .allMatch(title -> title.startsWith("branch against its path: low-body-heated ("));
        }
    }

    @Nested
    class A_joint_of_steering_or_brakes {

        @ParameterizedTest
        @CsvSource({"column-adaptor, 6", "pedal-box, 2", "servo-bracket, 2"})
        void stops_where_nobody_signs_for_it(String position, int lines) {
            assertThat(demo().in(
                                    "families/pannier-van/joints.json",
                                    "{\"position\": \"" + position + "\", \"safety\": true,",
                                    "{\"position\": \"" + position + "\",")
                            .found(VAN))
                    .hasSize(lines)
                    .allMatch(title -> title.startsWith("heavy joint not named: " + position));
        }

        @Test
        void stops_where_joints_json_leaves_it_out() {
            assertThat(demo().rewriting(
                                    "families/stook-pickup/joints.json",
                                    text -> text.replaceFirst("  \\{\"position\": \"column-adaptor\".*\\n", ""))
                            .found(PICKUP))
                    .hasSize(4)
                    .allMatch(title -> title.startsWith("heavy joint not named: column-adaptor"));
        }
    }

    @Nested
    class A_figure_of_no_order {

        private static final String PROMISE = "{\"when\": {\"drive-unit\": \"90-kw\", \"battery\": \"two-strings\"}";

        @Test
        void is_told_of_a_promise() {
            assertThat(dead(PROMISE, PROMISE.replace("two-strings", "one-string")))
                    .containsExactly("figure in no order: driving.json, promise 3");
        }

        @Test
        void is_told_of_what_runs_beside_driving() {
            assertThat(dead(
                            "\"when\": {\"heater\": [\"water\", \"air\"]}, \"watts\": \"1500\"",
                            "\"when\": {\"heater\": \"none\", \"air-conditioning\": \"yes\"}, \"watts\": \"1500\""))
                    .containsExactly("figure in no order: driving.json, auxiliary 'Cabin heater, on average'");
        }

        @Test
        void is_none_that_few_orders_have() {
            assertThat(dead(PROMISE, PROMISE.replace("\"two-strings\"", "\"two-strings\", \"drive-side\": \"left\"")))
                    .isEmpty();
        }

        private static List<String> dead(String from, String to) {
            Catalogue catalogue = demo().in(DRIVING, from, to).catalogue();
            return Prover.prove(
                            catalogue,
                            catalogue.family(VAN),
                            Kinds.all().stream()
                                    .filter(kind -> kind.name().equals("figure in no order"))
                                    .toList(),
                            Deadline.NONE,
                            Prover.Progress.NONE)
                    .defects()
                    .map(defect -> defect.statement().title())
                    .toList();
        }
    }

    /** The energy of Y capacitors and the precharge are added up over all devices: one left out is one too few. */
    @Nested
    class A_capacitor {

        private static final String ELECTRICS = "families/pannier-van/electrics.json";
        private static final String MISSING = ": high-voltage data missing for some order";

        @Test
        void is_told_without_what_it_has_to_the_chassis() {
            assertThat(demo().in(ELECTRICS, ", \"yNanofarad\": \"330\"", "").remarked())
                    .containsExactly("electrics pannier-van/inverter-60-kw" + MISSING);
        }

        @Test
        void is_told_where_nothing_limits_what_it_has_to_the_chassis() {
            assertThat(demo().in(ELECTRICS, "\"yJoule\": \"0.2\", ", "").remarked())
                    .contains("electrics pannier-van/limits" + MISSING);
        }

        @Test
        void is_told_where_a_device_has_none() {
            assertThat(demo().rewriting(
                                    ELECTRICS, text -> text.replaceFirst("  \\{\"capacitor\": \"compressor\".*\\n", ""))
                            .remarked())
                    .containsExactly("electrics pannier-van/compressor" + MISSING);
        }
    }
}
