package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What the house asks of kinds of parts, whatever a family's own file asks:")
class KindsTest {

    private static final String MISSING = "what every vehicle needs is missing: ";

    /**
     * UN Regulation 100 (isolation, service disconnect), ISO 6469-4 (crash), ISO 17409 (fault currents while charging): each
     * asks it of the vehicle and not of some variants.
     */
    @Nested
    class A_device_that_keeps_people_safe {

        @ParameterizedTest
        @CsvSource({
            "battery, isolation-monitor, HV-IMD, isolation-monitor (lithium-battery)",
            "low-voltage, crash-switch, LV-CRA, crash-switch (lithium-battery)",
            "low-voltage, brake-switch, LV-BRS, brake-switch (lithium-battery)",
            "charging, residual-monitor, CH-RCM, residual-current-monitor (on-board-charger)"
        })
        void is_missed_where_line_and_position_are_narrowed_together(
                String file, String position, String part, String found) {
            assertThat(demo().inKit(
                                    PICKUP,
                                    file,
                                    "\"part\": \"" + part + "\", \"quantity\": \"1\"",
                                    "\"part\": \"" + part
                                            + "\", \"quantity\": \"1\", \"when\": {\"drive-side\": \"left\"}")
                            .rewriting(
                                    "families/stook-pickup/kit/" + file + ".json",
                                    text -> text.replaceFirst(
                                            "(\"position\": \"" + position + "\".*?\"fill\": \"one\")",
                                            "$1, \"required\": {\"drive-side\": \"left\"}"))
                            .found(PICKUP))
                    .contains(MISSING + found);
        }

        /** UN Regulation 138, Regulation (EU) 540/2014: vehicles that are silent at low speed sound. */
        @Test
        void is_missed_in_the_markets_that_ask_for_it() {
            assertThat(demo().inKit(
                                    PICKUP,
                                    "low-voltage",
                                    "{\"market\": [\"europe\", \"united-kingdom\"]}",
                                    "{\"market\": \"europe\"}")
                            .found(PICKUP))
                    .contains(MISSING + "warning-sounder (lithium-battery)");
        }

        @Test
        void is_missed_inside_an_assembly() {
            assertThat(demo().inPart(
                                    "pannier-low-voltage",
                                    "{\"part\": \"VA-RES\", \"quantity\": \"1\"}, {\"part\": \"VA-CHK\", \"quantity\": \"1\"}",
                                    "{\"part\": \"VA-RES\", \"quantity\": \"1\"}")
                            .found(VAN))
                    .contains(MISSING + "check-valve (vacuum-pump)");
        }

        @Test
        void but_a_second_one_for_some_orders_is_no_matter() {
            assertThat(demo().inKit(
                                    PICKUP,
                                    "battery",
                                    "\"part\": \"HV-IMD\", \"quantity\": \"1\"",
                                    "\"part\": \"HV-IMD\", \"quantity\": \"2\"")
                            .found(PICKUP))
                    .isEmpty();
        }
    }

    @Nested
    class A_part_of_a_kind {

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                value = {
                    "common-climate | \"cautions\": [\"pressure\"] | part AC-HS: kind of part without its caution",
                    "stook-bed | \"cautions\": [\"hydraulic-oil\"] | part ST-TIP-HOSE: kind of part without its caution"
                })
        void keeps_its_caution(String file, String caution, String found) {
            assertThat(demo().inPart(file, caution, "\"cautions\": []").remarked())
                    .contains(found);
        }

        @Test
        void takes_as_many_bolts_as_it_has_ends() {
            assertThat(demo().inPart(
                                    "common-low-voltage",
                                    "{\"part\": \"FX-E8\", \"each\": \"2\"",
                                    "{\"part\": \"FX-E8\", \"each\": \"1\"")
                            .remarked())
                    .containsExactly("part LV-ES: kind of part with another number than it takes");
        }

        @Test
        void has_as_many_contacts_as_poles() {
            assertThat(demo().inPart(
                                    "common-high-voltage",
                                    "{\"part\": \"HV-KC50\", \"quantity\": \"2\"}",
                                    "{\"part\": \"HV-KC50\", \"quantity\": \"1\"}")
                            .remarked())
                    .contains("part HV-K50: kind of part with another number than it takes");
        }

        @Test
        void may_hold_other_things_besides() {
            assertThat(demo().inPart(
                                    "common-high-voltage",
                                    "{\"part\": \"HV-KS50\", \"quantity\": \"2\"}]",
                                    "{\"part\": \"HV-KS50\", \"quantity\": \"2\"}, {\"part\": \"HV-CL25\", \"quantity\": \"1\"}]")
                            .remarked())
                    .doesNotContain("part HV-K50: kind of part with another number than it takes");
        }
    }

    @Nested
    class A_part_for_one_market_or_language {

        @Test
        void is_seen_in_the_orders_of_another() {
            assertThat(demo().rewriting(
                                    "families/stook-pickup/kit/charging.json",
                                    text -> text.replace("\"CL-EU\"", "\"CL-XX\"")
                                            .replace("\"CL-UK\"", "\"CL-EU\"")
                                            .replace("\"CL-XX\"", "\"CL-UK\""))
                            .found(PICKUP))
                    .containsExactly(
                            "made for another vehicle: household-lead-europe (market)",
                            "made for another vehicle: household-lead-united-kingdom (market)");
        }

        @Test
        void is_seen_in_the_orders_of_another_language() {
            assertThat(demo().inKit(PICKUP, "papers", "\"LB-HV-FR\"", "\"LB-HV-DE\"")
                            .found(PICKUP))
                    .contains("made for another vehicle: labels-high-voltage-fr (language)");
        }

        @Test
        void says_so() {
            assertThat(demo().inPart(
                                    "common-labels",
                                    ", \"madeFor\": [{\"option\": \"language\", \"values\": [\"de\"]}]",
                                    "")
                            .remarked())
                    .contains("line pannier-van/labels-high-voltage-de: made for nobody knows whom");
        }

        @Test
        void but_one_that_only_some_markets_have_may_be_for_all() {
            assertThat(demo().catalogue()
                            .part(new boltlore.measure.PartNumber("LV-SND"))
                            .geometry()
                            .madeFor())
                    .isEmpty();
            assertThat(demo().remarked()).isEmpty();
        }
    }
}
