package boltlore.trades.coating;

import static boltlore.trades.coating.SampleOrders.order;
import static boltlore.trades.coating.SampleShop.OWN_BLACK;
import static boltlore.trades.coating.SampleShop.ZINC_BY_AREA;
import static boltlore.trades.coating.SampleShop.ZINC_BY_PIECE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CoatPlannerTest {

    private static final Part BRACKET = SampleShop.part("BR-1", SampleShop.coat("0.5"));
    private static final Part PLATE = SampleShop.part("PL-1", SampleShop.coat("0.2"));
    private static final Finish GREY = SampleShop.own("grey", SampleShop.coats("PB-GREY", "1.5", 80));
    private static final Catalogue CATALOGUE =
            SampleOrders.catalogue("PB-BLACK", OWN_BLACK, GREY, ZINC_BY_AREA, ZINC_BY_PIECE);

    private static CoatPlan plan(SampleOrders... orders) {
        return CoatPlanner.plan(List.of(orders).stream().map(SampleOrders::bill).toList(), CATALOGUE);
    }

    private static List<String> marks(BatchRow row) {
        return row.marks().stream().map(PieceMarks::written).toList();
    }

    @Nested
    class Which_pieces {

        @Test
        void what_is_not_coated_is_in_no_batch() {
            CoatPlan plan = plan(order("BL-1").notCoated(SampleShop.part("SC-1", null)));
            assertThat(plan.isEmpty()).isTrue();
        }

        @Test
        void an_unused_bracket_that_is_kept_is_coated_and_says_so() {
            CoatPlan plan = plan(order("BL-1").kept(1, BRACKET, OWN_BLACK));
            assertThat(plan.batches().get(0).rows())
                    .extracting(BatchRow::status)
                    .containsExactly(CoatingStatus.KEPT);
        }

        @Test
        void an_undecided_bracket_is_held_back_and_in_no_load() {
            CoatPlan plan = plan(order("BL-1").undecided(1, BRACKET, OWN_BLACK));
            assertThat(plan.onHold()).hasSize(1);
            assertThat(plan.batches()).isEmpty();
        }

        @Test
        void an_undecided_bracket_does_not_hold_back_the_same_part_that_is_needed() {
            CoatPlan plan = plan(order("BL-1").with(2, BRACKET, OWN_BLACK).undecided(1, BRACKET, OWN_BLACK));
            assertThat(marks(plan.batches().get(0).rows().get(0))).containsExactly("BL-1 1–2");
            assertThat(marks(plan.onHold().get(0))).containsExactly("BL-1 3");
        }

        @Test
        void a_finish_that_nobody_knows_is_named() {
            Finish unknown = SampleShop.own("mauve", SampleShop.BLACK);
            assertThatThrownBy(() -> plan(order("BL-1").with(1, BRACKET, unknown)))
                    .hasMessageContaining("mauve");
        }
    }

    @Nested
    class Marks {

        @Test
        void pieces_of_one_part_are_numbered_through_the_order() {
            CoatPlan plan = plan(order("BL-1").with(2, BRACKET, OWN_BLACK).with(2, BRACKET, OWN_BLACK));
            assertThat(marks(plan.batches().get(0).rows().get(0))).containsExactly("BL-1 1–4");
        }

        @Test
        void another_part_begins_at_one_again() {
            CoatPlan plan = plan(order("BL-1").with(2, BRACKET, OWN_BLACK).with(1, PLATE, OWN_BLACK));
            assertThat(marks(plan.batches().get(0).rows().get(1))).containsExactly("BL-1 1");
        }

        @Test
        void another_order_begins_at_one_again_in_the_same_row() {
            CoatPlan plan = plan(
                    order("BL-1").with(4, BRACKET, OWN_BLACK), order("BL-2").with(1, BRACKET, OWN_BLACK));
            BatchRow row = plan.batches().get(0).rows().get(0);
            assertThat(marks(row)).containsExactly("BL-1 1–4", "BL-2 1");
            assertThat(row.pieces()).isEqualTo(5);
        }
    }

    @Nested
    class Dates {

        @Test
        void the_earliest_need_comes_first_whatever_the_order_of_the_orders() {
            CoatPlan plan = plan(
                    order("BL-1", "2026-06-20").with(1, BRACKET, OWN_BLACK),
                    order("BL-2", "2026-06-10").with(1, BRACKET, OWN_BLACK));
            assertThat(marks(plan.batches().get(0).rows().get(0))).containsExactly("BL-2 1", "BL-1 1");
        }

        @Test
        void an_order_without_a_date_comes_last() {
            CoatPlan plan = plan(
                    order("BL-1").with(1, BRACKET, OWN_BLACK),
                    order("BL-2", "2026-06-10").with(1, BRACKET, OWN_BLACK));
            assertThat(marks(plan.batches().get(0).rows().get(0))).containsExactly("BL-2 1", "BL-1 1");
        }

        @Test
        void the_batch_with_the_earliest_need_comes_first() {
            CoatPlan plan = plan(
                    order("BL-1", "2026-06-20").with(1, BRACKET, OWN_BLACK),
                    order("BL-2", "2026-06-10").with(1, BRACKET, GREY));
            assertThat(plan.batches())
                    .extracting(batch -> batch.finish().name())
                    .containsExactly("grey", "black");
        }

        @Test
        @DisplayName("Back: 6 days of assembly before the due date; out: 8 days of turn-round before that")
        void dates_of_a_send_out() {
            CoatPlan plan = plan(order("BL-1", "2026-06-24").with(1, BRACKET, ZINC_BY_AREA));
            SendOut sendOut = plan.sendOuts().get(0);
            assertThat(sendOut.backBy()).isEqualTo(LocalDate.parse("2026-06-18"));
            assertThat(sendOut.outBy()).isEqualTo(LocalDate.parse("2026-06-10"));
        }

        @Test
        @DisplayName(
                "Sunday 14 June is no working day, so the Friday before counts; 8 days before Monday 15 June is Sunday 7 June")
        void dates_fall_on_working_days() {
            CoatPlan sunday = plan(order("BL-1", "2026-06-20").with(1, BRACKET, ZINC_BY_AREA));
            assertThat(sunday.sendOuts().get(0).backBy()).isEqualTo(LocalDate.parse("2026-06-12"));
            CoatPlan monday = plan(order("BL-1", "2026-06-21").with(1, BRACKET, ZINC_BY_AREA));
            assertThat(monday.sendOuts().get(0).backBy()).isEqualTo(LocalDate.parse("2026-06-15"));
            assertThat(monday.sendOuts().get(0).outBy()).isEqualTo(LocalDate.parse("2026-06-05"));
        }

        @Test
        void a_send_out_without_a_due_date_has_no_dates() {
            SendOut sendOut = plan(order("BL-1").with(1, BRACKET, ZINC_BY_AREA))
                    .sendOuts()
                    .get(0);
            assertThat(sendOut.backBy()).isNull();
            assertThat(sendOut.outBy()).isNull();
        }
    }

    @Nested
    class Groups {

        @Test
        void one_finish_is_one_batch() {
            CoatPlan plan = plan(order("BL-1").with(1, BRACKET, OWN_BLACK).with(1, PLATE, OWN_BLACK));
            assertThat(plan.batches()).hasSize(1);
        }

        @Test
        void another_finish_is_another_batch_of_the_same_part() {
            CoatPlan plan = plan(
                    order("BL-1").with(1, BRACKET, OWN_BLACK), order("BL-2").with(1, BRACKET, GREY));
            assertThat(plan.batches()).hasSize(2);
        }

        @Test
        void numbers_of_send_outs_go_on_from_the_batches() {
            CoatPlan plan = plan(order("BL-1").with(1, BRACKET, OWN_BLACK).with(1, PLATE, ZINC_BY_AREA));
            assertThat(plan.sendOuts()).extracting(SendOut::number).containsExactly(2);
        }

        @Test
        @DisplayName("By area: 3 × 0.2 m² × 24.50")
        void price_by_area() {
            assertThat(plan(order("BL-1").with(3, PLATE, ZINC_BY_AREA))
                            .sendOuts()
                            .get(0)
                            .price())
                    .isEqualByComparingTo("14.70");
        }

        @Test
        @DisplayName("By piece: 3 × 1.90")
        void price_by_piece() {
            assertThat(plan(order("BL-1").with(3, PLATE, ZINC_BY_PIECE))
                            .sendOuts()
                            .get(0)
                            .price())
                    .isEqualByComparingTo("5.70");
        }
    }

    @Test
    void a_piece_too_big_for_the_oven_is_told_and_in_no_load() {
        Part longRail = SampleShop.part("RA-1", SampleShop.coat("0.5", new EnvelopeMm(2100, 100, 100)));
        OvenBatch batch =
                plan(order("BL-1").with(1, longRail, OWN_BLACK)).batches().get(0);
        assertThat(batch.tooBig())
                .extracting(TooBig::why)
                .containsExactly("2100 × 100 × 100 mm does not go into 2000 × 1000 × 1000 mm");
        assertThat(plan(order("BL-1").with(1, longRail, OWN_BLACK)).loads()).isEmpty();
    }

    @Test
    void the_powder_of_the_loads_is_the_powder_of_the_run() {
        PowderRun run = plan(order("BL-1").with(25, BRACKET, OWN_BLACK)).runs().get(0);
        PowderUse use = PowderUse.of(run, CATALOGUE.workshop());
        assertThat(run.loads()).hasSizeGreaterThan(1);
        assertThat(run.loads()
                        .map(load -> use.issueKg(load, run.queues().get(0)))
                        .reduce(BigDecimal.ZERO, BigDecimal::add))
                .isCloseTo(use.issueKg(), Offset.offset(new BigDecimal("0.000001")));
    }
}
