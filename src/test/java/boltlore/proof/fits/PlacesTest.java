package boltlore.proof.fits;

import static boltlore.proof.fits.Planted.PICKUP;
import static boltlore.proof.fits.Planted.VAN;
import static boltlore.proof.fits.Planted.demo;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Fits;
import boltlore.measure.PositionName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is put somewhere fits there, and there is as much of it as follows from the rest, in every valid order. */
class PlacesTest {

    @Nested
    class A_box {

        private static final String MODULE = "\"sizeMm\": {\"length\": 270, \"width\": 205, \"height\": 150}";

        @Test
        void that_is_too_short_for_one_more_module_is_told_for_its_body_only() {
            assertThat(demo().inPart("common-high-voltage", MODULE, MODULE.replace("205", "206"))
                            .found(VAN))
                    .containsExactly("contents do not fit: rear-box (rear-modules)");
        }

        /** The pick-up's boxes are 566 mm wide inside: 2 × 274 + 3 × 6 mm of air are just that. */
        @Test
        void takes_modules_that_just_fit() {
            assertThat(demo().inPart("common-high-voltage", MODULE, MODULE.replace("270", "274"))
                            .found(PICKUP))
                    .isEmpty();
            assertThat(demo().inPart("common-high-voltage", MODULE, MODULE.replace("270", "275"))
                            .found(PICKUP))
                    .containsExactly(
                            "contents do not fit: battery-box-early (modules)",
                            "contents do not fit: battery-box-later (modules)");
        }

        /** They are 188 mm high inside: 154 mm and 34 mm for plate and covers are just that. */
        @Test
        void that_is_too_low_for_plate_module_and_covers_takes_none() {
            assertThat(demo().inPart("common-high-voltage", MODULE, MODULE.replace("150", "154"))
                            .found(PICKUP))
                    .isEmpty();
            assertThat(demo().inPart("common-high-voltage", MODULE, MODULE.replace("150", "155"))
                            .found(PICKUP))
                    .containsExactly(
                            "contents do not fit: battery-box-early (modules)",
                            "contents do not fit: battery-box-later (modules)");
        }

        @Test
        void is_not_judged_without_its_inner_size() {
            assertThat(demo().inPart(
                                    "stook-battery",
                                    "\"innerMm\": {\"length\": 910, \"width\": 566, \"height\": 188}",
                                    "\"sizeMm\": {\"length\": 918, \"width\": 574, \"height\": 194}")
                            .found(PICKUP))
                    .containsExactly("contents do not fit: battery-box-early (modules)");
        }

        /**
         * Worked by hand: 4 = ⌊(430 − 6) / (100 + 6)⌋ in a row, and one more from 536 mm on; layers by 60 + 10 mm. On edge,
         * 60 mm wide and 100 mm high, 6 = ⌊(430 − 6) / (60 + 6)⌋ lie in a row.
         */
        @ParameterizedTest
        @CsvSource({
            "430, 112, 70, 2, true, 4",
            "429, 112, 70, 2, true, 3",
            "536, 112, 70, 2, true, 5",
            "430, 218, 70, 2, true, 8",
            "430, 112, 69, 2, true, 0",
            "430, 112, 140, 2, true, 8",
            "430, 112, 140, 1, true, 4",
            "430, 112, 110, 2, true, 4",
            "430, 112, 110, 2, false, 6"
        })
        void takes_a_grid_of_what_lies_in_it(int length, int width, int height, int layers, boolean upright, int fits) {
            PositionName none = new PositionName("none");
            Fits.Box box = new Fits.Box(none, none, layers, 6, 10, upright);

            assertThat(BoxContents.fits(box, new EnvelopeMm(length, width, height), new EnvelopeMm(100, 100, 60)))
                    .isEqualTo(fits);
        }
    }

    @Nested
    class A_shaft {

        @Test
        void that_ends_behind_its_flange_is_told_for_the_body_that_has_it() {
            assertThat(demo().inPart("stook-drive", "\"lengthMm\": 518", "\"lengthMm\": 539")
                            .found(PICKUP))
                    .containsExactly("shaft does not reach: propshaft-late-45-kw (539 mm, flanges 518 mm apart)");
        }

        @Test
        void slides_as_far_as_it_slides() {
            assertThat(demo().inPart("stook-drive", "\"lengthMm\": 518", "\"lengthMm\": 538")
                            .found(PICKUP))
                    .isEmpty();
        }

        @Test
        void of_the_other_drive_unit_does_not_do() {
            assertThat(demo().inKit(VAN, "drive", "\"part\": \"PV-PS-LB\"", "\"part\": \"PV-PS-other\"")
                            .inKit(VAN, "drive", "\"part\": \"PV-PS-LS\"", "\"part\": \"PV-PS-LB\"")
                            .inKit(VAN, "drive", "\"part\": \"PV-PS-other\"", "\"part\": \"PV-PS-LS\"")
                            .found(VAN))
                    .containsExactly(
                            "shaft does not reach: propshaft-late-60-kw (351 mm, flanges 376 mm apart)",
                            "shaft does not reach: propshaft-late-90-kw (376 mm, flanges 351 mm apart)",
                            "made for another vehicle: propshaft-late-60-kw (drive-unit)",
                            "made for another vehicle: propshaft-late-90-kw (drive-unit)");
        }

        @Test
        void needs_a_flange_that_stands_somewhere_in_every_order() {
            assertThat(demo().inFits(VAN, ", {\"when\": {\"body-era\": \"late\"}, \"stationMm\": 2326}", "")
                            .found(VAN))
                    .containsExactly(
                            "shaft does not reach: propshaft-late-60-kw (rear flange not known)",
                            "shaft does not reach: propshaft-late-90-kw (rear flange not known)");
        }
    }

    @Nested
    class A_quantity {

        @ParameterizedTest
        @CsvSource({
            "battery, BM-VENT, 3, 30, safety quantity does not follow: box-vents",
            "battery, BM-CUR, 2, 1, quantity does not follow: current-sensors",
            "cooling, CO-TS, 2, 3, quantity does not follow: battery-sensors",
            "climate, HE-CUT, 2, 1, safety quantity does not follow: heater-cutout",
            "drive, FL-GEAR, 1.8, 18, quantity does not follow: gear-oil",
            "low-voltage, FX-PC20, 12, 8, quantity does not follow: clips-large"
        })
        void of_what_serves_something_follows_from_it(String file, String part, String from, String to, String told) {
            assertThat(demo().inKit(
                                    VAN,
                                    file,
                                    "\"part\": \"" + part + "\", \"quantity\": \"" + from + "\"",
                                    "\"part\": \"" + part + "\", \"quantity\": \"" + to + "\"")
                            .found(VAN))
                    .containsExactly(told);
        }

        @Test
        void of_oil_follows_from_the_compressor() {
            assertThat(demo().inPart(
                                    "common-climate",
                                    "\"part\": \"AC-POE\", \"each\": \"0.12\"",
                                    "\"part\": \"AC-POE\", \"each\": \"1.2\"")
                            .found(VAN))
                    .containsExactly("quantity does not follow: compressor-oil");
        }

        @Test
        void of_busbars_is_one_fewer_than_of_modules() {
            assertThat(demo().inKit(
                                    PICKUP,
                                    "battery",
                                    "\"part\": \"BM-BUS\", \"quantity\": \"7\"",
                                    "\"part\": \"BM-BUS\", \"quantity\": \"8\"")
                            .found(PICKUP))
                    .containsExactly("quantity does not follow: busbars");
        }

        @Test
        void of_the_second_string_is_compared_with_the_second_string() {
            assertThat(demo().inKit(
                                    VAN,
                                    "battery",
                                    "\"part\": \"FX-M6X16\", \"quantity\": \"16\", \"when\": {\"battery\": \"two-strings\"}",
                                    "\"part\": \"FX-M6X16\", \"quantity\": \"15\", \"when\": {\"battery\": \"two-strings\"}")
                            .found(VAN))
                    .containsExactly("safety quantity does not follow: rear-terminal-screws");
        }

        @Test
        void of_bolts_is_that_of_the_holes() {
            assertThat(demo().inKit(
                                    VAN,
                                    "drive",
                                    "\"part\": \"DU-90\", \"quantity\": \"1\", \"when\": {\"drive-unit\": \"90-kw\"}, \"needs\": [{\"part\": \"FX-M12X120\", \"each\": \"6\"",
                                    "\"part\": \"DU-90\", \"quantity\": \"1\", \"when\": {\"drive-unit\": \"90-kw\"}, \"needs\": [{\"part\": \"FX-M12X120\", \"each\": \"4\"")
                            .found(VAN))
                    .containsExactly("safety quantity does not follow: drive-unit-bolts");
        }

        @Test
        void of_the_lifting_eyes_of_a_box_that_hangs_above_people() {
            String four = "\"part\": \"FX-EYE10\", \"quantity\": \"4\"";
            assertThat(demo().inKit(PICKUP, "battery", four, four.replace("4", "3"))
                            .found(PICKUP))
                    .containsExactly("safety quantity does not follow: lifting-eyes");
        }

        @Test
        void of_monitors_may_come_in_another_way_as_long_as_it_is_the_same() {
            assertThat(demo().inKit(
                                    VAN,
                                    "battery",
                                    "\"part\": \"BM-MON\", \"quantity\": \"16\", \"when\": {\"battery\": \"two-strings\"}",
                                    "\"part\": \"BM-MON\", \"quantity\": \"16\", \"when\": {\"filled\": \"rear-box\"}")
                            .found(VAN))
                    .isEmpty();
        }

        @Test
        void that_changes_in_one_body_only_is_told() {
            assertThat(demo().inPart(
                                    "pannier-drive",
                                    "\"holes\": [{\"diameterMm\": \"13.5\", \"count\": 8}]",
                                    "\"holes\": [{\"diameterMm\": \"13.5\", \"count\": 6}]")
                            .found(VAN))
                    .containsExactly("safety quantity does not follow: cradle-bushes");
        }
    }
}
