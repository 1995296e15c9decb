package boltlore.trades.costing.path;

import static boltlore.trades.costing.SketchedPart.bought;
import static boltlore.trades.costing.SketchedPart.made;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.measure.PartNumber;
import boltlore.order.Extra;
import boltlore.trades.costing.CostedBill;
import boltlore.trades.costing.SketchedPart;
import boltlore.trades.costing.SmallKit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Assembly of the kit takes 6 days; the outside coater 8. */
@DisplayName("The path that sets a kit's lead time")
class LeadPathTest {

    private static final PartNumber TUBE = new PartNumber("TU-1");

    private static CostedBill kit(SketchedPart cradle) {
        return new SmallKit()
                .know(cradle.contains("TU-1", "2"))
                .know(bought("TU-1").days(30))
                .know(bought("DU-1").days(35))
                .take("drive", "CR-1", "1")
                .take("drive", "DU-1", "1")
                .priced();
    }

    private static List<String> names(List<Slot<Step>> slots) {
        return slots.stream()
                .map(slot -> slot.activity().what())
                .map(step -> step.what()
                        + (step.part() == null ? "" : " " + step.part().number()))
                .toList();
    }

    @Test
    void goes_from_the_part_through_its_assembly_and_the_outside_coater_to_the_kit() {
        LeadPath path = kit(made("CR-1").days(5).coated("zinc")).times().path();
        assertThat(path.days()).isEqualTo(30 + 5 + 8 + 6);
        assertThat(names(path.chain())).containsExactly("BUY TU-1", "ASSEMBLE CR-1", "COAT CR-1", "FINISH_KIT");
    }

    @Test
    void takes_no_step_for_what_is_coated_in_the_own_oven() {
        LeadPath path = kit(made("CR-1").days(5).coated("black")).times().path();
        assertThat(names(path.chain())).containsExactly("BUY TU-1", "ASSEMBLE CR-1", "FINISH_KIT");
        assertThat(path.days()).isEqualTo(30 + 5 + 6);
    }

    @Test
    void does_not_look_inside_what_is_bought() {
        LeadPath path = kit(bought("CR-1").days(5)).times().path();
        assertThat(names(path.chain())).containsExactly("BUY DU-1", "FINISH_KIT");
    }

    @Test
    void waits_for_extras_of_ours_but_not_for_what_the_customer_supplies() {
        assertThat(withExtra(false).days()).isEqualTo(90 + 6);
        assertThat(withExtra(true).days()).isEqualTo(10 + 6);
    }

    private static LeadPath withExtra(boolean byCustomer) {
        return new SmallKit()
                .know(bought("DU-1").days(10))
                .know(bought("XT-1").days(90))
                .take("drive", "DU-1", "1")
                .extra(new Extra(new PartNumber("XT-1"), "", BigDecimal.ONE, "each", null, null, byCustomer, "Wanted."))
                .priced()
                .times()
                .path();
    }

    @Nested
    @DisplayName("through companions that a part brings")
    class Companions {

        /** A box that holds a frame; the frame, or the box, needs bolts that take long. */
        private CostedBill kit(SketchedPart box, String asker) {
            return new SmallKit()
                    .know(box.contains("FR-1", "1"))
                    .know(made("FR-1").days(4))
                    .know(bought("BO-1").days(20))
                    .take("drive", "BX-1", "1")
                    .bring(asker, "BO-1", "4")
                    .priced();
        }

        @Test
        void waits_with_a_bolted_assembly_for_the_bolts_of_what_goes_into_it() {
            LeadPath path = kit(made("BX-1").days(7), "FR-1").times().path();
            assertThat(path.days()).isEqualTo(20 + 7 + 6);
            assertThat(names(path.chain())).containsExactly("BUY BO-1", "ASSEMBLE BX-1", "FINISH_KIT");
        }

        @Test
        void does_not_wait_with_a_weld_which_takes_no_bolts() {
            LeadPath path = kit(made("BX-1").days(7).welded(), "FR-1").times().path();
            assertThat(path.days()).isEqualTo(20 + 6);
        }

        @Test
        void does_not_wait_with_the_asker_itself_for_what_it_is_fitted_with() {
            LeadPath path = kit(made("BX-1").days(7), "BX-1").times().path();
            assertThat(path.days()).isEqualTo(20 + 6);
            assertThat(names(path.chain())).containsExactly("BUY BO-1", "FINISH_KIT");
        }

        @Test
        void passes_a_welds_bolts_on_to_the_bolted_assembly_around_it() {
            LeadPath path = new SmallKit()
                    .know(made("AS-1").days(3).contains("BX-1", "1"))
                    .know(made("BX-1").days(7).welded().contains("FR-1", "1"))
                    .know(made("FR-1").days(4))
                    .know(bought("BO-1").days(20))
                    .take("drive", "AS-1", "1")
                    .bring("FR-1", "BO-1", "4")
                    .priced()
                    .times()
                    .path();
            assertThat(names(path.chain())).containsExactly("BUY BO-1", "ASSEMBLE AS-1", "FINISH_KIT");
        }
    }

    @Nested
    @DisplayName("beside the chain")
    class Beside {

        private final LeadPath path =
                kit(made("CR-1").days(9).coated("black")).times().path();

        @Test
        void tells_what_comes_next_with_its_slack() {
            assertThat(names(path.next(5))).containsExactly("BUY DU-1");
            assertThat(path.next(5).get(0).slack()).isEqualTo(30 + 9 - 35);
        }

        @Test
        void tells_what_to_order_first_by_the_last_day_for_it() {
            assertThat(names(path.first(5))).containsExactly("BUY TU-1", "BUY DU-1");
            assertThat(path.first(5)).extracting(Slot::latestStart).containsExactly(0, 4);
        }

        @Test
        void halving_a_part_gains_no_more_than_the_next_chain_allows() {
            assertThat(path.gains()).isEqualTo(Map.of(TUBE, 4, new PartNumber("CR-1"), 4));
        }

        @Test
        void halving_a_part_that_is_not_on_the_chain_gains_nothing() {
            assertThat(path.gainOfHalving(new PartNumber("DU-1"))).isZero();
        }

        @Test
        void halving_rounds_up_to_whole_days() {
            LeadPath alone = new SmallKit()
                    .know(bought("DU-1").days(35))
                    .take("drive", "DU-1", "1")
                    .priced()
                    .times()
                    .path();
            assertThat(alone.gainOfHalving(new PartNumber("DU-1"))).isEqualTo(35 - 18);
        }

        @Test
        void a_part_at_two_places_is_halved_at_both() {
            LeadPath twice = new SmallKit()
                    .know(bought("DU-1").days(30))
                    .take("drive", "DU-1", "1")
                    .take("battery", "DU-1", "1")
                    .priced()
                    .times()
                    .path();
            assertThat(twice.gainOfHalving(new PartNumber("DU-1"))).isEqualTo(15);
        }
    }
}
