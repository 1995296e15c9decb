package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the check of the catalogue says without any order: threads, holes, lengths, mirror images, sizes. */
class CheckedFitsTest {

    @Test
    void the_demo_hangs_together() {
        assertThat(demo().remarked()).isEmpty();
    }

    @Nested
    class A_thread {

        private static final String ARMS =
                "{\"position\": \"torque-arms\", \"safety\": true, \"clampMm\": 18, \"into\": \"steel\", \"depthMm\": 22, \"thread\": \"M12\"}";

        @Test
        void of_another_pitch_does_not_go_into_the_tapped_hole() {
            assertThat(demo().in("families/stook-pickup/joints.json", ARMS, ARMS.replace("M12", "M12x1.5"))
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/torque-arm-left: thread does not mate",
                            "line stook-pickup/torque-arm-right: thread does not mate");
        }

        @Test
        void holds_too_little_where_more_is_clamped() {
            assertThat(demo().in("families/stook-pickup/joints.json", ARMS, ARMS.replace("18", "24"))
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/torque-arm-left: too little of the thread holds",
                            "line stook-pickup/torque-arm-right: too little of the thread holds");
        }

        /** Common practice, no source: once the diameter in steel, here 12 mm of 35. */
        @Test
        void holds_with_just_its_diameter() {
            assertThat(demo().in("families/stook-pickup/joints.json", ARMS, ARMS.replace("18", "23"))
                            .remarked())
                    .isEmpty();
        }

        @Test
        void bottoms_where_the_hole_is_too_shallow() {
            assertThat(demo().in("families/stook-pickup/joints.json", ARMS, ARMS.replace("22", "16"))
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/torque-arm-left: too little of the thread holds",
                            "line stook-pickup/torque-arm-right: too little of the thread holds");
        }

        @Test
        void of_a_rivet_nut_is_that_of_its_bolt() {
            assertThat(demo().inKit(PICKUP, "drive", "\"part\": \"FX-RN8\"", "\"part\": \"FX-RN6\"")
                            .in(
                                    "parts/common-fixings.json",
                                    "\"part\": \"FX-RN8\"",
                                    "\"needs\": [{\"part\": \"FX-GR32\", \"each\": 1, \"because\": \"-\"}], \"part\": \"FX-RN8\"")
                            .remarked())
                    .contains(
                            "line stook-pickup/propshaft-hoop-early: thread does not mate",
                            "line stook-pickup/propshaft-hoop-late: thread does not mate")
                    .doesNotContain("line pannier-van/propshaft-hoop-early: thread does not mate");
        }

        @Test
        void lacks_a_nut_where_there_are_fewer_nuts_than_bolts() {
            assertThat(demo().inKit(
                                    PICKUP,
                                    "controls",
                                    "{\"part\": \"FX-N8\", \"each\": \"6\"",
                                    "{\"part\": \"FX-N8\", \"each\": \"5\"")
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/pedal-box-left: thread does not mate",
                            "line stook-pickup/pedal-box-right: thread does not mate");
        }

        @Test
        void may_have_a_nut_to_spare() {
            assertThat(demo().inKit(
                                    PICKUP,
                                    "controls",
                                    "{\"part\": \"FX-N8\", \"each\": \"6\"",
                                    "{\"part\": \"FX-N8\", \"each\": \"7\"")
                            .remarked())
                    .isEmpty();
        }
    }

    @Nested
    class A_hole {

        private static final String GUARD = "\"FX-M8X20\", \"each\": \"6\", \"because\": \"The guard takes";

        @Test
        void without_a_bolt_is_told() {
            assertThat(demo().inPart("stook-battery", GUARD, GUARD.replace("6", "5"))
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/stone-guard-early: holes without a fixing",
                            "line stook-pickup/stone-guard-later: holes without a fixing",
                            "part ST-SG-E: sentence against its quantity",
                            "part ST-SG-S: sentence against its quantity");
        }

        @Test
        void of_a_bracket_may_be_for_what_it_carries() {
            assertThat(demo().inPart(
                                    "stook-battery",
                                    "{\"diameterMm\": \"6.6\", \"count\": 2}",
                                    "{\"diameterMm\": \"6.6\", \"count\": 2}, {\"diameterMm\": \"9.5\", \"count\": 1}")
                            .remarked())
                    .containsExactly("line stook-pickup/service-disconnect-bracket: holes without a fixing");
        }

        @Test
        void that_is_missing_is_told_as_before() {
            assertThat(demo().inPart("stook-battery", GUARD, GUARD.replace("6", "7"))
                            .remarked())
                    .containsExactly(
                            "line stook-pickup/stone-guard-early: fewer holes than fixings",
                            "line stook-pickup/stone-guard-later: fewer holes than fixings",
                            "part ST-SG-E: sentence against its quantity",
                            "part ST-SG-S: sentence against its quantity");
        }
    }

    @Nested
    class Contents_by_the_metre {

        private static final Pattern BY_LENGTH = Pattern.compile("\"perMetre\": \"([0-9.]+)\"");
        private static final Pattern LENGTH = Pattern.compile("\"lengthMm\": ([0-9]+)");

        @Test
        void of_another_vehicles_cables_are_told_of_each_of_them() {
            assertThat(demo().rewriting("parts/stook-high-voltage.json", text -> written(text, 150))
                            .rewriting("parts/stook-low-voltage.json", text -> written(text, 150))
                            .remarked())
                    .allMatch(remark -> remark.endsWith(": metres against length")
                            || remark.endsWith(": conductors of a power cable"))
                    .filteredOn(remark -> remark.endsWith(": metres against length"))
                    .extracting(remark -> remark.split(":", 2)[0])
                    .contains("part ST-HB-EL", "part ST-HXR", "part ST-C12-L")
                    .satisfies(parts -> assertThat(Set.copyOf(parts)).hasSize(33));
        }

        @Test
        void may_be_written_down_where_they_are_right() {
            assertThat(demo().rewriting("parts/stook-high-voltage.json", text -> written(text, 0))
                            .remarked())
                    .isEmpty();
        }

        /** As many metres as a cable takes that is so many mm longer, written down by hand. */
        private static String written(String parts, int longerMm) {
            return parts.lines()
                    .map(line -> BY_LENGTH.matcher(line).replaceAll(found -> {
                        var length = LENGTH.matcher(line);
                        assertThat(length.find()).isTrue();
                        BigDecimal metres = new BigDecimal(length.group(1))
                                .add(BigDecimal.valueOf(longerMm))
                                .movePointLeft(3);
                        return "\"quantity\": \""
                                + metres.multiply(new BigDecimal(found.group(1)))
                                        .toPlainString() + "\"";
                    }))
                    .collect(Collectors.joining("\n"));
        }
    }

    @Nested
    class A_mirror_image {

        private static final String RIGHT = "\"part\": \"PV-BB-ER\"";

        @Test
        void of_another_area_is_told() {
            assertThat(demo().rewriting(
                                    "parts/pannier-battery.json",
                                    text -> inLine(text, RIGHT, "\"areaM2\": \"0.038\"", "\"areaM2\": \"0.039\""))
                            .remarked())
                    .contains("part PV-BB-ER: mirror image that differs")
                    .allMatch(remark -> remark.startsWith("part PV-BB-ER: "));
        }

        @Test
        void of_other_holes_is_told() {
            assertThat(demo().rewriting(
                                    "parts/pannier-battery.json",
                                    text -> inLine(
                                            text,
                                            RIGHT,
                                            "{\"diameterMm\": 11, \"count\": 3}",
                                            "{\"diameterMm\": 11, \"count\": 2}, {\"diameterMm\": 12, \"count\": 1}"))
                            .remarked())
                    .containsExactly("part PV-BB-ER: mirror image that differs");
        }

        @Test
        void of_a_part_of_another_pair_is_told() {
            assertThat(demo().rewriting(
                                    "parts/pannier-battery.json",
                                    text -> inLine(
                                            text, RIGHT, "\"mirrorOf\": \"PV-BB-EL\"", "\"mirrorOf\": \"PV-RB-L\""))
                            .remarked())
                    .containsExactly(
                            "part PV-BB-ER: mirror image that differs", "part PV-BB-ER: mirror image that differs");
        }

        @Test
        void may_cost_more_and_lie_elsewhere() {
            assertThat(demo().rewriting(
                                    "parts/pannier-battery.json",
                                    text -> inLine(text, RIGHT, "\"leadDays\": 5", "\"leadDays\": 9"))
                            .remarked())
                    .isEmpty();
        }

        private static String inLine(String text, String line, String from, String to) {
            return text.lines()
                    .map(each -> each.contains(line) ? changed(each, from, to) : each)
                    .collect(Collectors.joining("\n"));
        }

        private static String changed(String line, String from, String to) {
            assertThat(line).contains(from);
            return line.replace(from, to);
        }
    }

    @Test
    void a_step_through_a_port_that_no_part_has_is_told() {
        assertThat(demo().inFits(
                                VAN,
                                "{\"position\": \"rear-service-disconnect\", \"in\": \"plug\"}",
                                "{\"position\": \"rear-service-disconnect\", \"in\": \"plugs\"}")
                        .remarked())
                .containsExactly("path pannier-van/rear-service-disconnect: path through a port that is not there");
    }

    @Test
    void a_part_that_is_packed_smaller_than_it_is_is_told() {
        assertThat(demo().in(
                                "workshop/shipping.json",
                                "\"part\": \"BM-44\", \"sizeMm\": {\"length\": 310,",
                                "\"part\": \"BM-44\", \"sizeMm\": {\"length\": 269,")
                        .remarked())
                .containsExactly("part BM-44: size against size");
    }

    @Test
    void a_part_may_be_packed_as_it_is() {
        assertThat(demo().in(
                                "workshop/shipping.json",
                                "\"part\": \"BM-44\", \"sizeMm\": {\"length\": 310, \"width\": 245, \"height\": 190}",
                                "\"part\": \"BM-44\", \"sizeMm\": {\"length\": 205, \"width\": 270, \"height\": 150}")
                        .remarked())
                .isEmpty();
    }

    @Test
    void a_box_is_no_wider_inside_than_outside() {
        assertThat(demo().inPart(
                                "stook-battery",
                                "\"innerMm\": {\"length\": 910, \"width\": 566",
                                "\"innerMm\": {\"length\": 910, \"width\": 576")
                        .remarked())
                .containsExactly("part ST-BX-E: size against size");
    }
}
