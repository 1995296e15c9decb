package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What electrics.json says of a cable, and the energy paths that go through it. */
@DisplayName("A branch against its path:")
class BranchPathsTest {

    private static List<String> van(String from, String to) {
        return in(VAN, from, to);
    }

    private static List<String> in(String family, String from, String to) {
        return demo().in("families/" + family + "/electrics.json", from, to).found(family);
    }

    @Test
    void the_demo_families_load_every_cable_with_what_lies_behind_it() {
        assertThat(demo().found(VAN)).isEmpty();
        assertThat(demo().found(PICKUP)).isEmpty();
    }

    @Nested
    class What_its_load_is_worked_out_from {

        @Test
        void a_battery_cable_that_feeds_the_converter_alone_leaves_out_the_drive_unit() {
            assertThat(van(
                            "[\"drive-90-kw\", \"converter\", \"compressor\", \"heater-water\", \"heater-air\"]",
                            "[\"converter\"]"))
                    .containsExactlyInAnyOrder(
                            "branch against its path: battery-90-kw (drive-90-kw)",
                            "branch against its path: battery-90-kw (compressor)",
                            "branch against its path: battery-90-kw (heater-water)",
                            "branch against its path: battery-90-kw (heater-air)");
        }

        @Test
        void but_need_not_name_the_branch_of_a_drive_unit_that_no_order_has_beside_it() {
            assertThat(van("[\"drive-90-kw\", \"converter\"", "[\"converter\", \"drive-90-kw\""))
                    .isEmpty();
        }

        @Test
        void nor_does_it_name_one_that_hangs_on_another_battery() {
            assertThat(van("[\"drive-90-kw\", \"converter\"", "[\"low-converter\", \"drive-90-kw\", \"converter\""))
                    .containsExactly("branch against its path: battery-90-kw (low-converter)");
        }

        @Test
        void a_link_of_two_strings_carries_what_the_cable_behind_the_contactors_does() {
            assertThat(van(
                            "{\"branches\": [\"battery-60-kw\", \"battery-90-kw\"], \"share\"",
                            "{\"branches\": [\"battery-60-kw\"], \"share\""))
                    .containsExactly("branch against its path: string (battery-90-kw)");
        }

        /** Kirchhoff's current law: of two equal strings side by side each carries half. */
        @ParameterizedTest
        @CsvSource({"0.49, true", "0.5, false", "0.6, false", "1, false"})
        void and_at_least_half_of_it(String share, boolean found) {
            assertThat(van("\"share\": \"0.6\"", "\"share\": \"" + share + "\""))
                    .isEqualTo(found ? List.of("branch against its path: string (two-strings)") : List.of());
        }

        @Test
        void the_one_cable_behind_a_battery_carries_all_that_it_feeds() {
            assertThat(van(
                            "\"heater-air\"]}, \"fuse\": \"main-400\"",
                            "\"heater-air\"], \"share\": \"0.5\"}, \"fuse\": \"main-400\""))
                    .contains("branch against its path: battery-90-kw (two-strings)");
        }

        @ParameterizedTest
        @DisplayName(
                "a cable at the end of a path carries what the device there draws, one of an inlet or a charger what that gives")
        @CsvSource(
                delimiter = '|',
                quoteCharacter = '`',
                value = {
                    "{\"watts\": \"3000\", \"efficiencyPercent\": \"95\"} | {\"chosen\": \"outlet\"} | compressor (pack-to-compressor)",
                    "\"cable-charger\", \"loadAmps\": \"25\", \"feeds\": {\"chosen\": \"charger-output\"} | \"cable-charger\", \"loadAmps\": \"25\", \"feeds\": {\"chosen\": \"charger-input\"} | charger-seven (charger-to-pack)",
                    "\"loadAmps\": \"16\", \"feeds\": {\"chosen\": \"charger-input\"} | \"loadAmps\": \"16\", \"feeds\": {\"chosen\": \"outlet\"} | inlet-mains-three (mains-to-charger)",
                    "\"one-string\"}, \"position\": \"cable-dc\", \"feeds\": {\"chosen\": \"direct-charging\"} | \"one-string\"}, \"position\": \"cable-dc\", \"feeds\": {\"watts\": \"100\", \"efficiencyPercent\": \"95\"} | direct-link-one (dc-inlet-to-pack)",
                    "\"loadAmps\": \"13\", \"feeds\": {\"chosen\": \"outlet\"} | \"loadAmps\": \"13\", \"feeds\": {\"chosen\": \"charger-output\"} | export-bs-1363 (vehicle-to-load)"
                })
        void the_kind_of_load(String from, String to, String found) {
            assertThat(van(from, to)).containsExactly("branch against its path: " + found);
        }

        /** P = 2 π n T: 220 Nm at 3,910 1/min are 90.1 kW, of which a data sheet's 5 % are 85.6 kW. */
        @ParameterizedTest
        @CsvSource({"9000, true", "85500, true", "85700, false", "90000, false"})
        void the_power_of_a_drive_unit_is_that_of_its_torque(String watts, boolean found) {
            String hours = Integer.parseInt(watts) < 55_000 ? "" : ", \"continuousWatts\": \"55300\"";
            assertThat(van(
                                    "\"driveUnit\": \"DU-90\"",
                                    "\"watts\": \"" + watts + "\"" + hours + ", \"efficiencyPercent\": \"91\"")
                            .stream()
                            .filter(title -> !title.endsWith("for hours)"))
                            .toList())
                    .isEqualTo(found ? List.of("branch against its path: drive-90-kw (DU-90)") : List.of());
        }

        @Test
        void a_converter_draws_no_less_than_it_gives() {
            assertThat(in(
                            PICKUP,
                            "\"feeds\": {\"watts\": \"2500\", \"efficiencyPercent\": \"94\"}",
                            "\"feeds\": {\"watts\": \"250\", \"efficiencyPercent\": \"94\"}"))
                    .singleElement()
                    .asString()
                    .startsWith("branch against its path: converter (");
        }
    }

    @Nested
    class What_feeds_it {

        @Test
        void a_path_that_begins_at_the_charger_is_not_fed_by_the_mains() {
            assertThat(
                            van(
                                    "\"fedBy\": \"charger\", \"volts\": \"230\", \"loadAmps\": \"16\", \"feeds\": {\"chosen\": \"outlet\"}, \"fuse\": \"export-16\"",
                                    "\"fedBy\": \"mains\", \"volts\": \"230\", \"loadAmps\": \"16\", \"feeds\": {\"chosen\": \"outlet\"}"))
                    .containsExactly("branch against its path: export-cee-7-3 (vehicle-to-load)");
        }

        @Test
        void one_that_begins_at_the_inlet_is() {
            assertThat(van(
                            "\"fedBy\": \"mains\", \"volts\": \"400\", \"phases\": 3, \"loadAmps\": \"16\"",
                            "\"fedBy\": \"charger\", \"volts\": \"400\", \"loadAmps\": \"16\""))
                    .containsExactly("branch against its path: inlet-mains-three (mains-to-charger)");
        }

        @Test
        void a_cable_of_the_high_voltage_network_hangs_on_the_pack() {
            assertThat(van(
                            "\"position\": \"cable-compressor\", \"feeds\"",
                            "\"position\": \"cable-compressor\", \"fedBy\": \"mains\", \"volts\": \"230\", \"feeds\""))
                    .containsExactly("branch against its path: compressor (pack-to-compressor)");
        }

        @Test
        void and_one_of_12_V_on_that_battery() {
            assertThat(van(
                            "\"position\": \"cable-converter-12\", \"fedBy\": \"low-voltage\"",
                            "\"position\": \"cable-converter-12\", \"fedBy\": \"pack\""))
                    .contains("branch against its path: low-converter (converter-to-12-v)");
        }
    }

    @Nested
    class Each_cable_has_one_branch {

        @Test
        void in_every_order_that_has_the_cable() {
            assertThat(
                            van(
                                    "{\"branch\": \"drive-90-kw\", \"says\": \"Junction box to drive unit\", \"when\": {\"drive-unit\": \"90-kw\"}",
                                    "{\"branch\": \"drive-90-kw\", \"says\": \"Junction box to drive unit\", \"when\": {\"drive-unit\": \"60-kw\"}"))
                    .contains(
                            "cable without its branch: cable-drive (none)",
                            "cable without its branch: cable-drive (several)");
        }

        @Test
        void and_none_where_it_has_no_cable() {
            assertThat(van(
                            "\"Junction box to heater\", \"when\": {\"heater\": \"air\"}",
                            "\"Junction box to heater\", \"when\": {\"heater\": [\"air\", \"none\"]}"))
                    .isEmpty();
        }
    }
}
