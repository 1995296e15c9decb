package boltlore.trades.cutting;

import static boltlore.trades.cutting.Rack.piece;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The arithmetic of mitres is plane geometry; the rules of the saw are common practice, no source. */
class SawingTest {

    private static BigDecimal rest(Rack rack) {
        return rack.plan().bars().get(0).restMm();
    }

    @Nested
    @DisplayName("A piece with slanted ends")
    class Slanted {

        private final Rack rack = new Rack().bar(6000, "1").saw("2", "10");

        @Test
        void lies_against_the_next_so_that_their_slants_overlap_and_one_cut_parts_them() {
            // 10 trim, the first slanted cut, two lengths less one slant of 40, and two more slanted cuts of 2/cos 45°.
            assertThat(rest(rack.slanted(2, "1000", 45, 45)).doubleValue())
                    .isCloseTo(6000 - 10 - 2000 + 40 - 3 * 2 * Math.sqrt(2), Offset.offset(0.11));
        }

        @Test
        void takes_its_whole_length_where_the_material_does_not_turn() {
            assertThat(rest(rack.notTurning().slanted(2, "1000", 45, 45)).doubleValue())
                    .isCloseTo(6000 - 10 - 2000 - 4 * 2 * Math.sqrt(2), Offset.offset(0.11));
        }

        @Test
        void with_one_slant_lies_in_pairs_between_square_cuts() {
            assertThat(rest(rack.slanted(2, "1000", 0, 45)).doubleValue())
                    .isCloseTo(6000 - 10 - 2000 + 40 - 2 * Math.sqrt(2) - 2, Offset.offset(0.11));
        }

        @Test
        void lies_parallel_to_its_neighbour() {
            List<LaidPiece> pieces =
                    rack.slanted(3, "1000", 45, 45).plan().bars().get(0).pieces();
            assertThat(pieces.get(1).left()).isEqualTo(pieces.get(0).right());
            assertThat(pieces.get(2).left()).isEqualTo(pieces.get(1).right());
        }

        @Test
        void lets_one_more_fit_than_whole_lengths_would() {
            assertThat(new Rack()
                            .bar(3000, "1")
                            .slanted(3, "1010", 45, 45)
                            .plan()
                            .bars())
                    .hasSize(1);
            assertThat(new Rack()
                            .bar(3000, "1")
                            .notTurning()
                            .slanted(3, "1010", 45, 45)
                            .plan()
                            .bars())
                    .hasSize(2);
        }
    }

    @Nested
    @DisplayName("Kerf and trim")
    class KerfAndTrim {

        @Test
        void the_last_piece_needs_no_cut_where_the_bar_ends_with_it() {
            Rack rack =
                    new Rack().bar(3000, "1").saw("2.5", "10").pieces(1, "990").pieces(1, "1997.5");
            assertThat(rack.plan().bars()).hasSize(1);
            assertThat(rest(rack)).isZero();
        }

        @Test
        @DisplayName("nothing is cut from the tail that the vice holds, and the last piece needs its cut")
        void the_held_tail() {
            Rack rack = new Rack()
                    .bar(3000, "1")
                    .saw("2.5", "10")
                    .heldTail("60")
                    .pieces(1, "990")
                    .pieces(1, "1935");
            assertThat(rack.plan().bars()).hasSize(1);
            assertThat(rest(rack)).isEqualByComparingTo("60");
        }

        @Test
        @DisplayName("a thousandth more would reach into the held tail and needs another bar")
        void into_the_held_tail() {
            Rack rack = new Rack()
                    .bar(3000, "1")
                    .saw("2.5", "10")
                    .heldTail("60")
                    .pieces(1, "990")
                    .pieces(1, "1935.001");
            assertThat(rack.plan().bars()).hasSize(2);
        }

        @Test
        void a_thousandth_more_needs_another_bar() {
            Rack rack =
                    new Rack().bar(3000, "1").saw("2.5", "10").pieces(1, "990").pieces(1, "1997.501");
            assertThat(rack.plan().bars()).hasSize(2);
        }
    }

    @Nested
    @DisplayName("The pieces of one part")
    class OneHeat {

        @Test
        void come_off_one_bar_even_where_that_takes_more_bars() {
            Rack loose = new Rack().bar(1250, "1").pieces(6, "400");
            Rack together = new Rack().bar(1250, "1");
            for (int i = 0; i < 3; i++) {
                together.part(piece(2, "400", 0, 0));
            }
            assertThat(loose.plan().bars()).hasSize(2);
            assertThat(together.plan().bars())
                    .hasSize(3)
                    .allSatisfy(bar -> assertThat(marks(bar)).hasSize(1));
        }

        @Test
        void are_told_to_be_of_one_heat_where_no_bar_holds_them_all() {
            MaterialCuts cuts = new Rack()
                    .bar(1000, "1")
                    .remnant("R1", "900", "H7")
                    .part(piece(3, "400", 0, 0))
                    .plan();
            assertThat(cuts.bars()).extracting(SawnBar::isBought).containsOnly(true);
            assertThat(cuts.bars().get(0).oneHeatWith()).containsExactly(2);
            assertThat(cuts.unused()).extracting(Remnant::name).containsExactly("R1");
        }

        @Test
        void say_nothing_of_other_bars_where_one_holds_them() {
            assertThat(new Rack().bar(1000, "1").pieces(4, "400").plan().bars())
                    .allSatisfy(bar -> assertThat(bar.oneHeatWith()).isEmpty());
        }

        private Stream<String> marks(SawnBar bar) {
            return bar.pieces().stream().map(piece -> piece.set().mark()).distinct();
        }
    }

    @Nested
    @DisplayName("Remnants")
    class Remnants {

        @Test
        void are_used_before_a_bar_is_bought() {
            MaterialCuts cuts = new Rack()
                    .bar(6000, "30")
                    .remnant("R1", "900", "H7")
                    .pieces(1, "800")
                    .plan();
            assertThat(cuts.cost()).isZero();
            assertThat(cuts.bars()).extracting(SawnBar::heat).containsExactly("H7");
        }

        @Test
        void the_shortest_that_will_do_is_taken() {
            MaterialCuts cuts = new Rack()
                    .bar(6000, "30")
                    .remnant("R1", "2000", "")
                    .remnant("R2", "900", "")
                    .pieces(1, "800")
                    .plan();
            assertThat(cuts.bars().get(0).remnant()).extracting(Remnant::name).isEqualTo("R2");
            assertThat(cuts.left()).extracting(Remnant::name).containsExactly("R1");
        }

        @Test
        void are_kept_from_the_workshops_shortest_length_on() {
            assertThat(new Rack()
                            .bar(1000, "1")
                            .keepFrom("300")
                            .pieces(1, "700")
                            .plan()
                            .left())
                    .extracting(Remnant::name)
                    .containsExactly("BL-1-1");
            assertThat(new Rack()
                            .bar(1000, "1")
                            .keepFrom("300")
                            .pieces(1, "700.5")
                            .plan()
                            .left())
                    .isEmpty();
        }

        @Test
        void that_are_too_short_for_anything_stay_where_they_are() {
            MaterialCuts cuts = new Rack()
                    .bar(6000, "30")
                    .remnant("R1", "700", "")
                    .pieces(1, "800")
                    .plan();
            assertThat(cuts.bought()).isEqualTo(1);
            assertThat(cuts.unused()).hasSize(1);
        }
    }

    @Nested
    @DisplayName("Bars of several lengths")
    class SeveralLengths {

        private final Rack rack = new Rack().bar(6000, "36").bar(3000, "20");

        @Test
        void the_cheaper_one_is_bought_where_it_will_do() {
            assertThat(rack.pieces(1, "2500").plan().cost()).isEqualByComparingTo("20");
        }

        @Test
        void one_long_bar_is_cheaper_than_two_short_ones() {
            assertThat(rack.pieces(2, "2500").plan().cost()).isEqualByComparingTo("36");
        }
    }

    @Test
    void a_piece_that_no_bar_holds_is_told() {
        MaterialPlanner planner = new Rack()
                .bar(3000, "1")
                .saw("2", "10")
                .pieces(1, "2990.5")
                .pieces(1, "500")
                .planner();
        assertThat(planner.tooLong()).extracting(PieceSet::mark).containsExactly("BL-1 P-1 1");
        assertThat(planner.plan(1, number -> "R-" + number).pieces()).isEqualTo(1);
    }
}
