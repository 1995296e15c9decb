package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.choices.Choices;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** From the pack to each consumer, and from each inlet to the pack, in every valid order. */
class EnergyPathsTest {

    private static final String DC_CABLE_LEFT =
            "{\"line\": \"cable-dc-left\", \"part\": \"PV-HE-L\", \"quantity\": \"1\", \"when\": {\"drive-side\": \"left\"}}";

    @Test
    void the_demo_families_are_joined_from_end_to_end() {
        assertThat(demo().found(VAN)).isEmpty();
        assertThat(demo().found(PICKUP)).isEmpty();
    }

    @Nested
    class A_path_is_broken {

        @Test
        void where_its_cable_is_missing_in_some_order() {
            assertThat(demo().inKit(
                                    VAN,
                                    "high-voltage",
                                    DC_CABLE_LEFT,
                                    DC_CABLE_LEFT.replace("\"left\"}}", "\"left\", \"air-conditioning\": \"no\"}}"))
                            .found(VAN))
                    .containsExactly("path or circuit broken: dc-inlet-to-pack (cable-dc)");
        }

        @Test
        void but_not_where_the_condition_leaves_out_only_what_a_limit_forbids() {
            assertThat(demo().inKit(
                                    VAN,
                                    "high-voltage",
                                    DC_CABLE_LEFT,
                                    DC_CABLE_LEFT.replace(
                                            "\"left\"}}", "\"left\", \"market\": [\"europe\", \"north-america\"]}}"))
                            .found(VAN))
                    .isEmpty();
        }

        @Test
        void where_a_cable_ends_in_a_connector_of_another_pattern() {
            assertThat(demo().inPart(
                                    "pannier-high-voltage",
                                    hv("a", "hv-small", 63) + ", " + hv("b", "hv-small", 63)
                                            + "]},\n  {\"part\": \"PV-HCR\"",
                                    hv("a", "hv-small", 63) + ", " + hv("b", "hv-main", 63)
                                            + "]},\n  {\"part\": \"PV-HCR\"")
                            .found(VAN))
                    .containsExactly("path or circuit broken: pack-to-converter (cable-converter to converter)");
        }

        @Test
        void and_the_sentence_names_two_parts_that_meet_in_the_order_that_shows_it() {
            Planted planted = demo().inPart(
                            "pannier-high-voltage",
                            hv("b", "hv-main", 400) + "]},\n  {\"part\": \"PV-HD-BR\"",
                            hv("b", "hv-small", 400) + "]},\n  {\"part\": \"PV-HD-BR\"");
            assertThat(planted.shown(VAN)).singleElement().satisfies(defect -> {
                Choices order = defect.witness().orElseThrow();
                Set<String> in = planted.linesOf(order);
                assertThat(defect.statement().lines()).isNotEmpty();
                assertThat(Pattern.compile("\\(([A-Z0-9-]+)\\), port")
                                .matcher(defect.statement().refuted())
                                .results()
                                .map(part -> part.group(1)))
                        .hasSize(2)
                        .allMatch(in::contains);
            });
        }

        @Test
        void where_two_plugs_meet() {
            assertThat(demo().inPart(
                                    "common-high-voltage",
                                    "\"kind\": \"hv-small\", \"flow\": \"hv-dc\", \"half\": \"male\", \"volts\": \"500\", \"amps\": \"20\"",
                                    "\"kind\": \"hv-small\", \"flow\": \"hv-dc\", \"half\": \"female\", \"volts\": \"500\", \"amps\": \"20\"")
                            .found(PICKUP))
                    .containsExactly("path or circuit broken: pack-to-converter (cable-converter to converter)");
        }

        @Test
        void where_the_part_has_no_port_of_that_name() {
            assertThat(demo().inFits(
                                    PICKUP,
                                    "{\"position\": \"junction-box\", \"in\": \"battery\", \"out\": \"converter\"}",
                                    "{\"position\": \"junction-box\", \"in\": \"battery\", \"out\": \"convertor\"}")
                            .found(PICKUP))
                    .containsExactly(
                            "path or circuit broken: pack-to-converter (junction-box to cable-converter)",
                            "port leads nowhere: HV-BP1 (blank)");
        }

        @Test
        void where_the_second_string_has_no_service_disconnect() {
            assertThat(demo().inKit(
                                    VAN,
                                    "battery",
                                    "\"part\": \"HV-SD1\", \"quantity\": \"1\", \"when\": {\"battery\": \"two-strings\"}",
                                    "\"part\": \"HV-SD1\", \"quantity\": \"1\", \"when\": {\"battery\": \"two-strings\", \"drive-unit\": \"60-kw\"}")
                            .found(VAN))
                    .containsExactly("path or circuit broken: rear-service-disconnect (rear-service-disconnect)");
        }
    }

    @Nested
    class A_branch_of_the_electrics {

        private static final String FUSE =
                "\"part\": \"HV-F400\", \"quantity\": \"1\", \"when\": {\"drive-unit\": \"90-kw\"";

        @Test
        void has_its_fuse_in_the_kit() {
            assertThat(demo().inKit(VAN, "battery", FUSE, FUSE + ", \"battery\": \"one-string\"")
                            .found(VAN))
                    .containsExactly(
                            "branch without its fuse: battery-90-kw (main-400)",
                            "branch without its fuse: drive-90-kw (main-400)",
                            "what every vehicle needs is missing: main-fuse (lithium-battery)");
        }

        @Test
        void needs_none_where_it_is_not_there_itself() {
            assertThat(demo().inKit(VAN, "battery", FUSE, FUSE + ", \"market\": [\"europe\", \"united-kingdom\"]")
                            .in(
                                    "families/" + VAN + "/electrics.json",
                                    "\"when\": {\"drive-unit\": \"90-kw\"}, \"position\"",
                                    "\"when\": {\"drive-unit\": \"90-kw\", \"market\": [\"europe\", \"united-kingdom\"]}, \"position\"")
                            .found(VAN))
                    .noneMatch(title -> title.startsWith("branch without its fuse"))
                    .containsExactly(
                            "cable without its branch: cable-battery (none)",
                            "cable without its branch: cable-drive (none)",
                            "what every vehicle needs is missing: main-fuse (lithium-battery)");
        }
    }

    @Nested
    class A_port_on_a_path {

        @Test
        void bears_what_flows_between_the_ends() {
            assertThat(demo().inPart(
                                    "stook-high-voltage",
                                    mains("b", "mains-small", 32, 3) + "]},\n  {\"part\": \"ST-HM-23PR\"",
                                    mains("b", "mains-small", 32, 1) + "]},\n  {\"part\": \"ST-HM-23PR\"")
                            .found(PICKUP))
                    .containsExactly(
                            "port below what flows: cable-inlet-ac-type-2-three-left/b (mains-to-charger, 3 phases)");
        }

        @Test
        void may_bear_no_more_than_the_weaker_end_gives() {
            assertThat(demo().inPart(
                                    "common-charging",
                                    mains("mains", "mains-small", 16, 3, "male", "480"),
                                    mains("mains", "mains-small", 16, 1, "male", "480"))
                            .inPart(
                                    "stook-high-voltage",
                                    mains("b", "mains-small", 32, 3),
                                    mains("b", "mains-small", 32, 1))
                            .found(PICKUP))
                    .noneMatch(title -> title.startsWith("port below what flows"))
                    .isNotEmpty();
        }

        @Test
        void bears_the_amps_of_a_larger_drive_unit() {
            assertThat(demo().inPart(
                                    "pannier-high-voltage",
                                    hv("b", "hv-main", 400) + "]},\n  {\"part\": \"PV-HD-BR\"",
                                    hv("b", "hv-main", 350) + "]},\n  {\"part\": \"PV-HD-BR\"")
                            .found(VAN))
                    .containsExactly("port below what flows: cable-drive-90-kw-left/b (pack-to-drive, 400 A)");
        }

        @Test
        void bears_the_full_pack() {
            assertThat(demo().inPart(
                                    "common-climate",
                                    "\"volts\": \"500\", \"amps\": \"25\"",
                                    "\"volts\": \"400\", \"amps\": \"25\"")
                            .found(PICKUP))
                    .containsExactly("port below what flows: heater-water/dc (pack-to-heater, 403.2 V)");
        }

        @Test
        void may_be_rated_for_just_that() {
            assertThat(demo().inPart(
                                    "common-climate",
                                    "\"volts\": \"500\", \"amps\": \"25\"",
                                    "\"volts\": \"403.2\", \"amps\": \"25\"")
                            .found(PICKUP))
                    .isEmpty();
        }
    }

    @Nested
    class A_port_that_no_path_uses {

        @Test
        void is_told_where_its_blank_is_missing() {
            assertThat(demo().in(
                                    "families/stook-pickup/companions.json",
                                    "{\"part\": \"HV-BP1\", \"each\": \"1\", \"when\": {\"not\": {\"filled\": \"heater-unit\"}}, ",
                                    "{\"part\": \"HV-BP1\", \"each\": \"1\", \"when\": {\"heater\": \"air\"}, ")
                            .found(PICKUP))
                    .containsExactly("port leads nowhere: HV-BP1 (blank)");
        }

        @Test
        void is_closed_by_one_blank_each() {
            assertThat(demo().in(
                                    "families/stook-pickup/companions.json",
                                    "{\"part\": \"HV-BP1\", \"each\": \"1\", \"when\": {\"not\": {\"filled\": \"heater-unit\"}}, ",
                                    "{\"part\": \"HV-BP1\", \"each\": \"1\", \"when\": {\"heater\": \"none\"}, ")
                            .found(PICKUP))
                    .isEmpty();
        }

        private static final String DC_THEN_OUT =
                "{\"port\": \"dc\", \"kind\": \"hv-small\", \"flow\": \"hv-dc\", \"half\": \"male\", \"volts\": \"500\", \"amps\": \"20\"}, {\"port\": \"out\"";

        @Test
        void is_told_where_a_new_port_leads_nowhere() {
            assertThat(demo().inPart(
                                    "common-high-voltage",
                                    DC_THEN_OUT,
                                    hv("spare", "hv-small", 20) + ", " + DC_THEN_OUT)
                            .found(PICKUP))
                    .containsExactly("port leads nowhere: converter (spare)");
        }

        @Test
        void is_told_where_two_cables_go_to_one() {
            assertThat(demo().inFits(
                                    PICKUP,
                                    "{\"position\": \"junction-box\", \"in\": \"battery\", \"out\": \"converter\"}",
                                    "{\"position\": \"junction-box\", \"in\": \"battery\", \"out\": \"charger\"}")
                            .found(PICKUP))
                    .containsExactly("port leads nowhere: HV-BP1 (blank)", "port taken twice: junction-box (charger)");
        }
    }

    private static String hv(String port, String kind, int amps) {
        return "{\"port\": \"" + port + "\", \"kind\": \"" + kind
                + "\", \"flow\": \"hv-dc\", \"half\": \"female\", \"volts\": \"1000\", \"amps\": \"" + amps + "\"}";
    }

    private static String mains(String port, String kind, int amps, int phases) {
        return mains(port, kind, amps, phases, "female", "750");
    }

    private static String mains(String port, String kind, int amps, int phases, String half, String volts) {
        return "{\"port\": \"" + port + "\", \"kind\": \"" + kind + "\", \"flow\": \"ac-mains\", \"half\": \"" + half
                + "\", \"volts\": \"" + volts + "\", \"amps\": \"" + amps + "\", \"phases\": " + phases + "}";
    }
}
