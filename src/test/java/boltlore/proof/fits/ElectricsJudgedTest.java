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

@DisplayName("A figure of the electrical system that slipped:")
class ElectricsJudgedTest {

    private static final String FUSES = "blade fuse against its circuit: ";

    private static Planted electrics(String family, String from, String to) {
        return demo().in("families/" + family + "/electrics.json", from, to);
    }

    private static Planted test(String from, String to) {
        return demo().in("families/stook-pickup/tests.json", from, to);
    }

    @Nested
    class A_blade_fuse {

        /** Common practice, no source: 25 A before a wire for 9 A burn the wire; 80 % of 5 A are 4 A, and 18 A flow. */
        @ParameterizedTest
        @CsvSource({
            "export, LV-BF5, LV-BF25, export (LV-BF25)",
            "heater-air, LV-BF25, LV-BF5, heater-air (LV-BF5)",
            "heater-air, LV-BF25, LV-BF15, heater-air (LV-BF15)"
        })
        void goes_with_load_and_wire(String line, String part, String other, String found) {
            String from = "\"line\": \"fuses-" + line + "\", \"part\": \"";
            assertThat(demo().inKit(PICKUP, "low-voltage", from + part, from + other)
                            .found(PICKUP))
                    .contains(FUSES + found);
        }

        @Test
        void may_be_larger_than_its_load_as_long_as_the_wire_bears_it() {
            assertThat(electrics(
                                    PICKUP,
                                    "\"position\": \"fuses-export\", \"loadAmps\": \"2\"",
                                    "\"position\": \"fuses-export\", \"loadAmps\": \"4\"")
                            .found(PICKUP))
                    .isEmpty();
        }

        @Test
        void that_a_part_brings_along_has_its_circuit_too() {
            assertThat(electrics(PICKUP, "\"position\": \"cabin-outlet\"", "\"position\": \"work-lamp\"")
                            .found(PICKUP))
                    .contains(FUSES + "cabin-outlet (LV-BF5)");
        }

        @Test
        void without_a_rating_leaves_its_circuit_bare() {
            assertThat(demo().inPart("common-low-voltage", "\"ratedAmps\": \"25\", ", "")
                            .found(PICKUP))
                    .contains(FUSES + "heater-air (fuses-heater)");
        }

        @Test
        void is_rated_as_it_is_called() {
            assertThat(demo().inPart("common-low-voltage", "\"ratedAmps\": \"25\"", "\"ratedAmps\": \"20\"")
                            .remarked())
                    .contains("part LV-BF25: rating that cannot be");
        }
    }

    @Nested
    class What_is_not_said {

        @Test
        void of_where_a_fuse_sits() {
            assertThat(electrics(PICKUP, "\"fuseAfterMm\": 250, \"cable\": \"LV-W25\"", "\"cable\": \"LV-W25\"")
                            .remarked())
                    .containsExactly(
                            "branch stook-pickup/low-body-heated: fuse that sits nobody knows where",
                            "branch stook-pickup/low-body-unheated: fuse that sits nobody knows where");
        }

        @Test
        void of_contacts_that_an_inlet_shares() {
            assertThat(electrics(VAN, ", \"sharedPins\": true, \"isolatedBy\": \"charger-isolation\"", "")
                            .remarked())
                    .containsExactly(
                            "inlet pannier-van: contacts shared without isolating contactors",
                            "inlet pannier-van/j3400: unlike the standard that its name gives");
        }

        @Test
        void of_the_torque_of_a_terminal() {
            assertThat(demo().rewriting(
                                    "parts/common-charging.json",
                                    text -> text.replaceAll(", \"bolted\": \\{[^}]*\\}", ""))
                            .found(PICKUP))
                    .contains("terminal not named: inlet-type-2/dc (cable-inlet-dc-type-2-left/a)");
        }
    }

    /** Lug and stud of ISO 261: M8 does not go onto M10. */
    @Test
    void a_lug_of_another_size_than_the_stud() {
        assertThat(demo().rewriting(
                                "parts/common-low-voltage.json",
                                text -> text.replace(
                                        "{\"thread\": \"M8\", \"torqueNm\": \"9\"",
                                        "{\"thread\": \"M10\", \"torqueNm\": \"9\""))
                        .found(PICKUP))
                .anyMatch(title -> title.startsWith("terminal not named: main-fuse-holder/body"));
        assertThat(demo().inPart("common-low-voltage", "\"stud\": \"M8\"", "\"stud\": \"M6\"")
                        .remarked())
                .contains("part ST-C12-L: rating that cannot be");
    }

    /**
     * UN Regulation 100: 0.1 Ω of bonding; ISO 6469-3: 60 V direct are voltage class A's end; IEC 61851-1: pilot of 9 V and 6 V,
     * each ± 1 V; IEC 62196-1: 50 K of rise at the contacts. Others common practice, no source.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "contactors-rest | {\"atMost\": \"10\"}, \"bound\": \"volts-at-rest\" | {\"atMost\": \"100\"}, \"bound\": \"volts-at-rest\"",
                "discharge-time | {\"atMost\": \"5\"} | {\"atMost\": \"50\"}",
                "converter-volts | \"atMost\": \"14.8\" | \"atMost\": \"16.8\"",
                "converter-volts | {\"atLeast\": \"13.6\", \"atMost\": \"14.8\"} | {\"atLeast\": \"13.6\"}",
                "interlock-loop | {\"atMost\": \"10\"}, \"bound\": \"interlock-resistance\" | {\"atMost\": \"1000\"}, \"bound\": \"interlock-resistance\"",
                "inlet-warmth | \"atMost\": \"70\" | \"atMost\": \"170\"",
                "pilot-connected | {\"atLeast\": \"8\", \"atMost\": \"10\"} | {\"atLeast\": \"2\", \"atMost\": \"10\"}",
                "pilot-charging | {\"atLeast\": \"5\", \"atMost\": \"7\"} | {\"atLeast\": \"5\", \"atMost\": \"12\"}",
                "export-earth | {\"calculated\": \"bonding\"} | {\"atMost\": \"1\"}, \"bound\": \"bonding-resistance\"",
                "export-earth | {\"calculated\": \"bonding\"} | {\"atMost\": \"0.05\"}",
                "vacuum | \"bound\": \"vacuum-seconds\" | \"bound\": \"interlock-resistance\""
            })
    void a_limit_of_a_test_beyond_its_bound(String name, String from, String to) {
        assertThat(test(from, to).remarked())
                .contains("test stook-pickup/" + name + ": limit of a test beyond its bound");
    }

    @Test
    void but_a_limit_may_be_stricter_than_its_bound() {
        assertThat(test(
                                "{\"atMost\": \"10\"}, \"bound\": \"volts-at-rest\"",
                                "{\"atMost\": \"60\"}, \"bound\": \"volts-at-rest\"")
                        .remarked())
                .noneMatch(remark -> remark.endsWith("beyond its bound"));
    }

    /** UN Regulation 100, 5.1.3, asks 500 Ω/V of alternating current: 0.01 MΩ would do for 20 V. */
    @Test
    void an_insulation_that_nobody_would_pass() {
        assertThat(demo().in(
                                "families/pannier-van/tests.json",
                                "{\"atLeast\": \"10\"}, \"bound\": \"unit-insulation\"",
                                "{\"atLeast\": \"0.01\"}, \"bound\": \"unit-insulation\"")
                        .remarked())
                .containsExactly("test pannier-van/isolation-compressor: limit of a test beyond its bound");
    }

    /** P = 2 π n T: 100 Nm at 3,820 1/min are 40.0 kW for hours. */
    @Nested
    class Power {

        private static final String DRIVE = "{\"driveUnit\": \"DU-60\"}";

        @ParameterizedTest
        @CsvSource({"35000, true", "40000, false", "38500, false", "60000, true"})
        void for_hours_is_that_of_the_torque(String hours, boolean found) {
            String said =
                    "{\"watts\": \"60000\", \"continuousWatts\": \"" + hours + "\", \"efficiencyPercent\": \"90\"}";
            assertThat(electrics(VAN, DRIVE, said).found(VAN).stream()
                            .anyMatch("branch against its path: drive-60-kw (DU-60, for hours)"::equals))
                    .isEqualTo(found);
        }

        @ParameterizedTest
        @CsvSource({"25000", "250"})
        void of_the_converter_is_that_of_its_rating(String watts) {
            assertThat(electrics(
                                    PICKUP,
                                    "\"fedBy\": \"low-voltage\", \"feeds\": {\"watts\": \"2500\"",
                                    "\"fedBy\": \"low-voltage\", \"feeds\": {\"watts\": \"" + watts + "\"")
                            .found(PICKUP))
                    .anyMatch(title -> title.startsWith("branch against its path: "));
        }

        @Test
        void of_a_device_is_not_far_above_its_rating() {
            assertThat(electrics(
                                    PICKUP,
                                    "\"watts\": \"5000\", \"efficiencyPercent\": \"100\"",
                                    "\"watts\": \"50000\", \"efficiencyPercent\": \"100\"")
                            .found(PICKUP))
                    .contains("branch against its path: heater-water (HE-W5)");
        }
    }

    @Nested
    class A_rating {

        @ParameterizedTest
        @CsvSource({"5600", "56"})
        void of_a_capacitor_goes_with_the_power_of_its_device(String microfarad) {
            assertThat(electrics(PICKUP, "\"microfarad\": \"560\"", "\"microfarad\": \"" + microfarad + "\"")
                            .remarked())
                    .contains("capacitor stook-pickup/inverter-60-kw: rating that cannot be");
        }

        @ParameterizedTest
        @CsvSource({"160, true", "1.6, true", "32, true", "16, false"})
        void of_a_supply_is_one_that_outlets_have(String amps, boolean found) {
            assertThat(demo().in(
                                    "workshop/markets.json",
                                    "\"volts\": 230, \"amps\": 16",
                                    "\"volts\": 230, \"amps\": " + amps)
                            .remarked()
                            .contains("supply three-phase-16: rating that cannot be"))
                    .isEqualTo(found);
        }

        /** Common practice, no source: 60 to 300 Wh/kg with the case. */
        @ParameterizedTest
        @CsvSource({"186, true", "1.86, true", "18.6, false", "16, false"})
        void of_a_module_goes_with_its_mass(String mass, boolean found) {
            assertThat(demo().inPart("common-high-voltage", "\"massKg\": \"18.6\"", "\"massKg\": \"" + mass + "\"")
                            .remarked()
                            .contains("part BM-44: rating that cannot be"))
                    .isEqualTo(found);
        }
    }

    /** ADR 2025, chapter 3.2: UN 3480 alone, UN 3481 with equipment; 6.1.3.1: mark with packing group and gross mass. */
    @Nested
    class Of_a_shipment {

        @Test
        void the_number_of_batteries_with_equipment() {
            assertThat(demo().inPart("common-high-voltage", "UN 3480", "UN 3481")
                            .remarked())
                    .containsExactly("part BM-44: battery without its UN number");
        }

        @ParameterizedTest
        @CsvSource({
            "\"maxGrossKg\": \"300\", \"maxGrossKg\": \"301\", true",
            "\"maxGrossKg\": \"300\", \"maxGrossKg\": \"299\", false",
            "4D/Y300, 4D/Z300, true",
            "4D/Y300, 4D/X300, false"
        })
        void a_crate_against_its_mark(String from, String to, boolean found) {
            assertThat(demo().in("workshop/shipping.json", from, to)
                            .remarked()
                            .contains("crate battery-box-80: crate against its UN mark"))
                    .isEqualTo(found);
        }
    }
}
