package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Shipping;
import boltlore.sketch.PartSketch;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("What is to be looked at before crates leave")
class ShippingFindingTest {

    private static ShippedKit pack() {
        return new ShippedKit().battery("PACK", "20", "3000");
    }

    @Test
    void where_no_road_leads_nobody_is_told_that_the_rules_of_the_road_apply() {
        List<String> looks = pack().byRoad("IE", "GB").to("AU").looks();
        assertThat(looks)
                .anySatisfy(says -> assertThat(says)
                        .startsWith("AU is not reached by road from IE")
                        .contains("--by sea or --by air"))
                .noneSatisfy(says -> assertThat(says).contains("1.1.3.6"));
    }

    @Test
    void a_ferry_on_the_way_is_road_and_so_is_a_way_that_nobody_has_told_of() {
        for (ShippedKit kit : List.of(pack().byRoad("IE", "GB").to("GB"), pack().to("AU"))) {
            assertThat(kit.looks())
                    .anySatisfy(says -> assertThat(says).contains("1.1.3.6"))
                    .noneSatisfy(says -> assertThat(says).contains("not reached by road"));
        }
    }

    @Test
    void a_way_that_was_said_is_not_asked_for_again() {
        assertThat(pack().byRoad("IE", "GB").by(By.SEA).to("AU").looks())
                .noneSatisfy(says -> assertThat(says).contains("not reached by road"));
    }

    @Test
    void nothing_stops_a_sound_kit() {
        assertThat(pack().part("A", "5", 2)
                        .known("PACK", true, "Folder 1", "30")
                        .stops())
                .isEmpty();
    }

    @Nested
    @DisplayName("of dangerous goods")
    class Dangerous {

        @Test
        void a_battery_by_its_customs_code_without_a_un_number_stops() {
            PartSketch battery = PartSketch.bought("PACK").massKg("20").customs("8507.60", "HU");
            assertThat(new ShippedKit().part(battery, "", 1).stops())
                    .containsExactly("PACK Part PACK is a battery by its customs code 8507.60 and has no UN number."
                            + " Put 'transport' to the part as its safety data sheet says.");
            PartSketch lid = PartSketch.bought("PACK").massKg("20").customs("8508.60", "HU");
            assertThat(new ShippedKit().part(lid, "", 1).stops()).isEmpty();
        }

        @Test
        void lithium_by_its_customs_code_under_the_number_of_lead_stops() {
            PartSketch hidden =
                    ShippedKit.cells("PACK", "20", "UN 2794", "3000").customs("8507.60", "HU");
            assertThat(new ShippedKit().part(hidden, "", 1).stops())
                    .anySatisfy(says -> assertThat(says)
                            .contains("PACK Part PACK is a lithium battery by its customs code, caution or name, and"
                                    + " would travel as UN 2794."));
            PartSketch lead = ShippedKit.cells("PACK", "20", "UN 2794", "3000").customs("8507.10", "HU");
            assertThat(new ShippedKit().part(lead, "", 1).stops())
                    .noneSatisfy(says -> assertThat(says).contains("would travel as"));
        }

        @Test
        void a_battery_without_its_energy_stops() {
            assertThat(new ShippedKit().battery("PACK", "20", null).stops())
                    .singleElement()
                    .asString()
                    .contains("energy in Wh is not known");
        }

        @Test
        void a_number_that_is_not_known_stops() {
            ShippedKit kit = new ShippedKit()
                    .part(ShippedKit.cells("CAN", "2", "UN 1263", "1").customs("3208.90", "HU"), "", 1);
            assertThat(kit.stops()).singleElement().asString().contains("UN 1263 in crate 1 is not among the numbers");
        }

        /** ADR 2025, chapter 3.2: UN 3480 alone, UN 3481 packed with equipment; a crate of dangerous goods holds no equipment. */
        @Test
        void a_battery_alone_in_its_crate_stops_as_one_with_equipment() {
            assertThat(numbered("UN 3481").stops())
                    .singleElement()
                    .asString()
                    .contains("UN 3481 in crate 1 is for batteries packed with or contained in equipment", "UN 3480");
            assertThat(numbered("UN 3480").stops()).isEmpty();
        }

        private ShippedKit numbered(String un) {
            return new ShippedKit()
                    .part(ShippedKit.cells("CELLS", "20", un, "3000").customs("8507.60", "HU"), "", 1)
                    .known("CELLS", true, "Folder", null);
        }

        @Test
        void a_class_of_another_number_stops() {
            ShippedKit kit = new ShippedKit()
                    .part(ShippedKit.cells("ACID", "2", "UN 2800", null).customs("8507.20", "HU"), "", 1);
            assertThat(kit.stops()).containsExactly("ACID Part ACID has class 9, but UN 2800 is of class 8.");
        }

        @Test
        void packaging_without_approval_stops_unless_each_is_heavy_in_a_strong_case() {
            assertThat(pack().unMark("").stops()).singleElement().asString().contains("has no UN mark");
            assertThat(pack().unMark("").known("PACK", true, "Folder", null).stops())
                    .isEmpty();
            ShippedKit light = new ShippedKit().battery("PACK", "11.9", "3000").unMark("");
            assertThat(light.known("PACK", true, "Folder", null).stops()).hasSize(1);
        }

        /** ADR 2025, 2.2.9.1.7.1 (g), as quoted by its special provision 310 (gefahrgutbrumme.de/ADR2025/SV/SV310.html). */
        @Test
        void a_battery_whose_test_summary_nobody_keeps_stops() {
            assertThat(pack().known("PACK", true, "", null).stops())
                    .singleElement()
                    .asString()
                    .contains("shipping.json does not say where its test summary", "ADR 2025, 2.2.9.1.7.1");
            assertThat(pack().known("PACK", true, "Folder", null).stops()).isEmpty();
        }

        /** Special provision 310 of ADR 2025, the same page. */
        @Test
        void a_prototype_travels_without_a_test_summary_by_road_and_sea() {
            ShippedKit prototype = pack().smallRun("PACK");
            assertThat(prototype.stops()).isEmpty();
            assertThat(prototype.looks())
                    .anySatisfy(says -> assertThat(says)
                            .contains("ADR 2025, special provision 310", "P910", "'Transport in accordance with"));
            assertThat(prototype.by(By.SEA).looks())
                    .anySatisfy(says -> assertThat(says).contains("IMDG Code, amendment 42-24, special provision 310"));
        }

        /** Special provision A88 of the air rules: approval of the State of origin (lithiumca.batteriestransport.org/18). */
        @Test
        void a_prototype_by_air_stops_for_want_of_an_approval() {
            assertThat(pack().smallRun("PACK").by(By.AIR).stops())
                    .singleElement()
                    .asString()
                    .contains("ICAO Technical Instructions 2025-2026, special provision A88", "State of origin");
        }

        @Test
        void another_customs_code_than_that_of_lithium_batteries_is_looked_at() {
            PartSketch odd = ShippedKit.cells("PACK", "20", "UN 3480", "3000").customs("8507.10", "HU");
            assertThat(new ShippedKit().part(odd, "", 1).looks())
                    .anySatisfy(says -> assertThat(says).contains("come under 8507.60"));
        }
    }

    @Nested
    @DisplayName("by air")
    class Air {

        private ShippedKit byAir(String charge) {
            return pack().known("PACK", true, "Folder", charge).by(By.AIR);
        }

        @Test
        void more_than_thirty_per_cent_of_charge_stops() {
            assertThat(byAir("31").stops())
                    .containsExactly(
                            "PACK Part PACK leaves at 31 % charge; by air (ICAO Technical Instructions 2025-2026) 30 % is the most.");
            assertThat(byAir("30").stops()).isEmpty();
            assertThat(byAir("31").by(By.SEA).stops()).isEmpty();
        }

        /** Packing instruction 965, section IA, from memory. */
        @Test
        void a_strong_case_does_not_stand_in_for_approved_packaging() {
            assertThat(byAir("30").unMark("").stops())
                    .singleElement()
                    .asString()
                    .contains("has no UN mark. By air", "a strong case alone does not do");
            assertThat(byAir("30").stops()).isEmpty();
        }

        @Test
        void a_charge_that_nobody_knows_stops() {
            assertThat(pack().by(By.AIR).stops())
                    .anySatisfy(says -> assertThat(says).contains("state of charge must be known"));
        }

        @Test
        void more_than_35_kg_of_batteries_in_a_package_stops() {
            ShippedKit heavy = new ShippedKit()
                    .battery("PACK", "35.1", "3000")
                    .known("PACK", true, "Folder", "30")
                    .by(By.AIR);
            assertThat(heavy.stops())
                    .singleElement()
                    .asString()
                    .contains("may hold 35 kg of batteries and holds 35.1 kg");
            assertThat(heavy.by(By.ROAD).stops()).isEmpty();
        }
    }

    @Nested
    @DisplayName("by road")
    class Road {

        private String road(int packs) {
            ShippedKit kit = new ShippedKit().part(ShippedKit.cells("PACK", "37", "UN 3480", "3000"), "", packs);
            return kit.looks().stream()
                    .filter(says -> says.contains("points"))
                    .findFirst()
                    .orElse("");
        }

        @Test
        void up_to_1000_points_the_exemption_applies_and_above_it_does_not() {
            assertThat(road(9))
                    .startsWith(
                            "999 ADR points, up to 1000: the exemption applies (ADR 2025, 1.1.3.6), 1 points are left");
            assertThat(road(10))
                    .startsWith("1110 ADR points, above the 1000 of the exemption")
                    .contains("Orange plates");
        }

        @Test
        void all_orders_in_the_vehicle_count_together() {
            Shipment one = new ShippedKit()
                    .part(ShippedKit.cells("PACK", "60", "UN 3480", "3000"), "", 3)
                    .shipment();
            Consignment two = new Consignment(List.of(one, one));
            assertThat(two.points().points()).isEqualByComparingTo("1080");
            assertThat(two.points().exempt()).isFalse();
            assertThat(new Consignment(List.of(one)).points().exempt()).isTrue();
            assertThat(one.findings(two).all())
                    .anySatisfy(finding -> assertThat(finding.says())
                            .startsWith("1080 ADR points with the other order in the vehicle"));
        }
    }

    @Nested
    @DisplayName("at borders")
    class Borders {

        @Test
        void an_unmarked_motor_code_is_looked_at() {
            PartSketch motor = PartSketch.bought("DRIVE").massKg("80").customs("8501.52", "CZ");
            ShippedKit kit = new ShippedKit().part(motor, "", 1);
            assertThat(kit.motor("DRIVE", "90").looks())
                    .anySatisfy(says -> assertThat(says).contains("a motor of 90 kW comes under 8501.53"));
            assertThat(kit.motor("DRIVE", "75").looks())
                    .noneSatisfy(says -> assertThat(says).contains("8501"));
        }

        @Test
        void goods_without_a_code_are_looked_at_beyond_the_union_of_customs_only() {
            ShippedKit kit = new ShippedKit().part(PartSketch.bought("A").massKg("5"), "", 1);
            assertThat(kit.to("AU").looks())
                    .contains("No customs code or origin is known of A: ask the customs broker.");
            assertThat(kit.to("FR").looks())
                    .noneSatisfy(says -> assertThat(says).contains("customs code"));
        }

        @Test
        void a_country_beyond_the_union_on_the_way_takes_customs_papers() {
            Shipping shipping = new ShippedKit().shipping();
            assertThat(new Route(By.ROAD, List.of("GB", "IE")).leavesUnion(shipping))
                    .isTrue();
            assertThat(new Route(By.ROAD, List.of("FR")).leavesUnion(shipping)).isFalse();
            assertThat(new Route(By.ROAD, List.of()).leavesUnion(shipping))
                    .as("not told")
                    .isTrue();
        }
    }
}
