package boltlore.trades.weighing.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.catalogue.Aboard.Who;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.demo.Demo;
import boltlore.report.Approved;
import boltlore.report.Page;
import boltlore.report.Workbook;
import boltlore.report.text.TextWriter;
import boltlore.trades.weighing.WeighedKit;
import boltlore.trades.weighing.Weigher;
import boltlore.trades.weighing.Weighing;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class WeighSheetTest {

    private static final int WIDE = 200;

    private static Workbook demo(String order) {
        Catalogue catalogue = Demo.catalogue();
        Bill bill = Demo.bill(order);
        Family family = bill.resolved().choices().family();
        return WeighSheet.of(Weigher.of(catalogue, family, bill), family, catalogue.workshop());
    }

    private static List<String> says(WeighedKit kit, String about) {
        return WeighWords.of(kit.weighing()).stream()
                .filter(found -> found.about().equals(about))
                .map(Found::says)
                .toList();
    }

    @Test
    void a_demo_order_reads_as_a_person_has_approved_it() {
        Approved.check("trades/weighing/sheets/bl-2001", new TextWriter(WIDE).text(demo("bl-2001")));
    }

    @Test
    void cautions_stand_on_the_first_page_and_at_the_weighbridge() {
        assertThat(new TextWriter(WIDE).text(demo("bl-1001")).replaceAll("[\\s|]+", " "))
                .contains("weighed axle by axle on a verified weighbridge")
                .contains("set the vehicle on axle stands")
                .contains("registration are for your local authority");
    }

    @Test
    void without_axle_loads_there_are_two_pages_that_say_what_is_missing() {
        WeighedKit kit = new WeighedKit().donor(null).added("BOX", "20", 100, null);
        Weighing weighing = kit.weighing();
        Family family = weighing.bill().resolved().choices().family();
        Workbook sheet = WeighSheet.of(weighing, family, Demo.catalogue().workshop());
        assertThat(sheet.pages()).extracting(Page::name).containsExactly("Weights", "Masses");
        assertThat(new TextWriter(WIDE).text(sheet)).contains("The axle loads of the donor vehicle are not known");
    }

    @Nested
    class Words {

        private WeighedKit heavy() {
            return new WeighedKit()
                    .added("BOX-A", "400", 2400, 300)
                    .added("BOX-B", "100", 1200, 300)
                    .added("BOX-C", "1", 0, 300)
                    .aboard(Who.DRIVER, "75", 1200)
                    .aboard(Who.LUGGAGE, "50", 2400);
        }

        @Test
        void a_limit_that_is_exceeded_is_told_with_kilograms_and_what_weighs_most_there() {
            assertThat(says(heavy(), "Limits"))
                    .containsExactly(
                            "Converted, fully laden: the rear axle carries 1027.5 kg, 27.5 kg more than its limit"
                                    + " of 1000 kg. Of the kit, most comes from Part BOX-A (BOX-A) 400 kg, Part BOX-B (BOX-B) 50"
                                    + " kg, Part BOX-C (BOX-C) 0 kg.");
        }

        @Test
        void without_the_luggage_no_limit_is_exceeded() {
            assertThat(says(new WeighedKit().added("BOX-A", "400", 2400, 300), "Limits"))
                    .containsExactly("No axle and not the whole vehicle is above its limit. Least is left on the rear"
                            + " axle: 110 kg (converted, nobody in it).");
        }

        @Test
        void a_move_forward_is_told_as_one() {
            assertThat(says(new WeighedKit().added("BOX-A", "100", 0, 300), "Centre of gravity"))
                    .singleElement()
                    .asString()
                    .contains(" mm forward: from 1120 to 1023 mm");
        }

        @Test
        void a_share_in_front_below_common_practice_asks_for_a_look_at_steering_and_brakes() {
            assertThat(says(new WeighedKit().added("BOX-A", "400", 2400, 300), "Front axle"))
                    .singleElement()
                    .asString()
                    .startsWith(
                            "38.6 % of the mass is on the front axle, nobody in the vehicle, less than the 40 %, the"
                                    + " workshop's own least value");
        }

        @Test
        void a_lighter_vehicle_is_told_as_lighter() {
            assertThat(says(new WeighedKit().removed("engine", "105", 0, null), "Mass"))
                    .containsExactly(
                            "The vehicle becomes 105 kg (10 %) lighter: 1050 kg before, 945 kg after, nobody in it.");
        }
    }
}
