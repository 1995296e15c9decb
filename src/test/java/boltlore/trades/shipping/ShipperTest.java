package boltlore.trades.shipping;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.sketch.PartSketch;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("A kit in its crates")
class ShipperTest {

    private static PartSketch part(String number, String kg) {
        return PartSketch.bought(number).massKg(kg).customs("8708.99", "IE");
    }

    private static Extra oneOff(@Nullable String price, boolean byCustomer) {
        BigDecimal each = price == null ? null : new BigDecimal(price);
        return new Extra(null, "Ladder rack", BigDecimal.ONE, "each", BigDecimal.ONE, each, byCustomer, "Wanted.");
    }

    private static List<String> names(Crate crate) {
        return crate.packed().stream().map(packed -> packed.goods().name()).toList();
    }

    @Nested
    @DisplayName("by fit stage")
    class Stages {

        @Test
        void each_stage_has_its_own_in_fitting_order() {
            Shipment shipment = new ShippedKit()
                    .part(part("A", "5"), "rear", "", 1)
                    .part(part("B", "5"), "front", "", 1)
                    .part(part("C", "5"), "front", "", 1)
                    .shipment();
            assertThat(shipment.crates())
                    .extracting(ShipperTest::names)
                    .containsExactly(List.of("B", "C"), List.of("A"));
            assertThat(shipment.crates()).extracting(Crate::number).containsExactly(1, 2);
        }

        @Test
        void a_bag_that_is_a_crate_of_its_own_is_one_in_each_stage() {
            Shipment shipment = new ShippedKit()
                    .ownCrate("drive", false)
                    .part(part("A", "5"), "front", "drive", 1)
                    .part(part("B", "5"), "front", "small", 1)
                    .part(part("C", "5"), "rear", "drive", 1)
                    .shipment();
            assertThat(shipment.crates())
                    .extracting(ShipperTest::names)
                    .containsExactly(List.of("A"), List.of("B"), List.of("C"));
        }

        @Test
        void or_one_for_all_stages_where_the_workshop_packs_it_together() {
            Shipment shipment = new ShippedKit()
                    .ownCrate("cables", true)
                    .part(part("A", "5"), "front", "cables", 1)
                    .part(part("B", "5"), "rear", "cables", 1)
                    .shipment();
            assertThat(shipment.crates()).hasSize(1);
            assertThat(shipment.crates().get(0).stages()).containsExactly("front", "rear");
        }

        @Test
        void batteries_lie_apart_from_all_else_even_of_the_same_bag() {
            Shipment shipment = new ShippedKit()
                    .part(part("A", "5"), "crate", 1)
                    .part(ShippedKit.cells("PACK", "20", "UN 3480", "3000"), "crate", 1)
                    .shipment();
            assertThat(shipment.crates()).extracting(ShipperTest::names).containsExactly(List.of("A"), List.of("PACK"));
            assertThat(shipment.crates())
                    .extracting(crate -> crate.type().name())
                    .containsExactly("case", "battery-box");
        }

        @Test
        void what_holds_a_battery_inside_is_dangerous_goods_too() {
            Shipment shipment = new ShippedKit()
                    .part(part("LID", "1"), "rear", "", 1)
                    .part(ShippedKit.cells("CELL", "2", "UN 3480", "500"), "rear", "", 1)
                    .part(PartSketch.made("BOX").contains("CELL", "4").stocked(), "front", "", 1)
                    .shipment();
            assertThat(shipment.dangerous()).hasSize(1);
            assertThat(shipment.dangerous().get(0).netKg()).isEqualByComparingTo("10");
        }
    }

    @Nested
    @DisplayName("when it is too much for one")
    class Several {

        @Test
        void goes_into_as_many_as_its_mass_needs() {
            Shipment shipment = new ShippedKit().part("WEIGHT", "50", 7).shipment();
            assertThat(shipment.crates()).hasSize(3);
            assertThat(shipment.netKg()).isEqualByComparingTo("350");
            assertThat(shipment.crates())
                    .allSatisfy(crate -> assertThat(crate.grossKg()).isLessThanOrEqualTo(new BigDecimal("200")));
        }

        @Test
        void three_of_them_stay_in_one() {
            assertThat(new ShippedKit().part("WEIGHT", "50", 3).shipment().crates())
                    .hasSize(1);
        }

        @Test
        void goes_into_as_many_as_its_volume_needs() {
            ShippedKit kit = new ShippedKit().part("TANK", "1", 5).size("TANK", 600, 500, 400);
            assertThat(kit.shipment().crates()).as("120 l each, 288 l usable").hasSize(3);
        }

        @Test
        void bags_stay_whole_where_they_can() {
            Shipment shipment = new ShippedKit()
                    .part(part("A", "60"), "one", 1)
                    .part(part("B", "60"), "two", 1)
                    .part(part("C", "60"), "one", 1)
                    .part(part("D", "60"), "two", 1)
                    .shipment();
            assertThat(shipment.crates())
                    .extracting(ShipperTest::names)
                    .containsExactly(List.of("A", "C"), List.of("B", "D"));
        }
    }

    @Nested
    @DisplayName("when something goes into none")
    class TooLarge {

        @Test
        void names_a_part_that_is_too_heavy_and_the_strongest_crate() {
            ShippedKit kit = new ShippedKit().part("BLOCK", "178.1", 1);
            assertThat(kit.stops())
                    .containsExactly("BLOCK Part BLOCK (178.1 kg) goes into no crate of the workshop. The strongest,"
                            + " 'case', takes 178 kg within 1000 × 800 × 600 mm.");
            assertThat(kit.shipment().crates()).isEmpty();
        }

        @Test
        void not_one_that_just_goes_in() {
            assertThat(new ShippedKit().part("BLOCK", "178", 1).stops()).isEmpty();
        }

        @Test
        void names_a_part_that_is_too_long() {
            ShippedKit kit = new ShippedKit().part("RAIL", "5", 1).size("RAIL", 1001, 20, 20);
            assertThat(kit.stops()).singleElement().asString().contains("RAIL Part RAIL (5 kg, 1001 × 20 × 20 mm)");
            assertThat(kit.size("RAIL", 20, 1000, 20).stops()).as("turned").isEmpty();
        }

        @Test
        void tells_a_slip_of_the_pen_from_a_part_that_is_too_large() {
            assertThat(new ShippedKit().part("BLOCK", "100", 1_000_000).stops())
                    .containsExactly("1000000 of BLOCK Part BLOCK (100 kg each) are more than can be packed."
                            + " Check the quantity.");
            assertThat(new ShippedKit().part("BLOCK", "100", 400).shipment().crates())
                    .hasSize(400);
        }

        @Test
        void a_battery_does_not_go_into_a_crate_for_other_goods() {
            assertThat(new ShippedKit().battery("PACK", "92.5", "9000").stops())
                    .anySatisfy(says -> assertThat(says).contains("kept for dangerous goods"));
            assertThat(new ShippedKit().battery("PACK", "92", "9000").stops()).isEmpty();
        }
    }

    @Nested
    @DisplayName("with extras")
    class Extras {

        @Test
        void has_a_crate_of_them_behind_the_kit_which_must_be_weighed() {
            ShippedKit kit = new ShippedKit().part("A", "5", 1).extra(oneOff("30.00", false));
            assertThat(kit.shipment().crates())
                    .extracting(ShipperTest::names)
                    .containsExactly(List.of("A"), List.of("Ladder rack"));
            assertThat(kit.looks())
                    .anySatisfy(says -> assertThat(says).contains("the mass of Ladder rack is not known"));
        }

        @Test
        void does_not_pack_what_the_customer_supplies_but_says_so() {
            ShippedKit kit = new ShippedKit().part("A", "5", 1).extra(oneOff(null, true));
            assertThat(kit.shipment().crates()).hasSize(1);
            assertThat(kit.looks()).contains("Ladder rack is not packed: the customer supplies it.");
        }

        @Test
        void keeps_a_spare_battery_with_the_dangerous_goods() {
            Extra spare = new Extra(new PartNumber("PACK"), "", BigDecimal.ONE, "each", null, null, false, "Spare.");
            Shipment shipment =
                    new ShippedKit().battery("PACK", "20", "3000").extra(spare).shipment();
            assertThat(shipment.dangerous()).hasSize(1);
            assertThat(shipment.dangerous().get(0).pieces()).isEqualByComparingTo("2");
            assertThat(shipment.dangerous().get(0).wattHours()).isEqualByComparingTo("6000");
        }
    }

    @Test
    void gross_is_net_with_crate_and_packing() {
        Crate crate = new ShippedKit().part("A", "30.5", 2).shipment().crates().get(0);
        assertThat(crate.netKg()).isEqualByComparingTo("61");
        assertThat(crate.grossKg()).isEqualByComparingTo("83");
    }
}
