package boltlore.trades.coating;

import static boltlore.trades.coating.SampleOrders.order;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import boltlore.bill.Bill;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Finish;
import boltlore.catalogue.Part;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LateOrderTest {

    private static final Finish BLACK = SampleShop.own("black", SampleShop.BLACK);
    private static final Finish GREY = SampleShop.own("grey", SampleShop.coats("PB-GREY", "1.5", 80));
    private static final Finish WHITE = SampleShop.own("white", SampleShop.coats("PB-WHITE", "1.5", 80));
    private static final Finish TWO_COAT = SampleShop.own("two-coat", SampleShop.PRIMER, SampleShop.BLACK);
    private static final Part BRACKET = SampleShop.part("BR-1", SampleShop.coat("0.5"));
    private static final Catalogue CATALOGUE =
            SampleOrders.catalogue(SampleShop.costed("PB-WHITE", 10), Map.of(), BLACK, GREY, WHITE, TWO_COAT);

    private static LateMoves moves(SampleOrders late, SampleOrders... planned) {
        List<Bill> bills = Stream.of(planned).map(SampleOrders::bill).toList();
        return LateMoves.of(bills, late.bill(), CATALOGUE);
    }

    private static List<Integer> changed(LateMoves moves) {
        return moves.loads().stream().map(move -> move.after().number()).toList();
    }

    @Test
    @DisplayName("Room for four on ten hooks: four more hang in load 1, and nothing else changes")
    void into_room() {
        LateMoves moves =
                moves(order("BL-2").with(4, BRACKET, BLACK), order("BL-1").with(6, BRACKET, BLACK));
        assertThat(changed(moves)).containsExactly(1);
        assertThat(moves.loads().get(0).morePieces()).isEqualTo(4);
        assertThat(moves.after().loads()).hasSize(1);
    }

    @Test
    void a_full_load_stays_as_it_is_and_a_new_one_takes_the_next_number() {
        LateMoves moves = moves(
                order("BL-3").with(1, BRACKET, BLACK),
                order("BL-1").with(10, BRACKET, BLACK),
                order("BL-2").with(10, BRACKET, WHITE));
        assertThat(changed(moves)).containsExactly(3);
        assertThat(moves.loads().get(0).before()).isNull();
        assertThat(moves.after().loads().map(OvenLoad::number)).containsExactly(1, 2, 3);
    }

    @Test
    void a_new_powder_comes_where_it_costs_least() {
        LateMoves moves = moves(
                order("BL-3").with(1, BRACKET, GREY),
                order("BL-1").with(1, BRACKET, BLACK),
                order("BL-2").with(1, BRACKET, WHITE));
        assertThat(moves.after().runs())
                .extracting(PowderRun::powder)
                .containsExactly("PB-WHITE", "PB-GREY", "PB-BLACK");
        assertThat(moves.after().loads().map(OvenLoad::number)).containsExactly(1, 3, 2);
    }

    @Test
    void a_primer_comes_before_the_run_that_its_top_coat_joins() {
        LateMoves moves =
                moves(order("BL-2").with(1, BRACKET, TWO_COAT), order("BL-1").with(1, BRACKET, BLACK));
        assertThat(moves.after().runs()).extracting(PowderRun::powder).containsExactly("PB-PRIMER", "PB-BLACK");
        assertThat(moves.after().loads()).extracting(OvenLoad::pieces).containsExactly(1, 2);
    }

    @Test
    void it_goes_into_the_round_of_its_need() {
        LateMoves moves = moves(
                order("BL-3", "2026-07-22").with(1, BRACKET, BLACK),
                order("BL-1", "2026-06-10").with(1, BRACKET, BLACK),
                order("BL-2", "2026-07-20").with(1, BRACKET, BLACK));
        assertThat(changed(moves)).containsExactly(2);
    }

    @Test
    void needed_long_after_all_others_it_makes_a_round_of_its_own() {
        LateMoves moves = moves(
                order("BL-2", "2026-09-01").with(1, BRACKET, BLACK),
                order("BL-1", "2026-06-10").with(1, BRACKET, BLACK));
        assertThat(moves.after().rounds()).hasSize(2);
        assertThat(moves.after().loads().map(OvenLoad::number)).containsExactly(1, 2);
    }

    @Test
    @DisplayName("Eight loads fill day 1: one more pushes the last order of them to day 2")
    void touches_days() {
        LateMoves moves = moves(
                order("BL-3").with(10, BRACKET, WHITE),
                order("BL-1").with(40, BRACKET, WHITE),
                order("BL-2").with(30, BRACKET, BLACK));
        assertThat(moves.orders())
                .extracting(
                        move -> move.after().order().name(),
                        move -> move.after().day())
                .contains(tuple("BL-3", 1), tuple("BL-2", 2));
    }

    @Test
    void every_piece_of_all_orders_hangs_once_a_coat() {
        LateMoves moves = moves(
                order("BL-3").with(7, BRACKET, TWO_COAT).with(3, BRACKET, GREY),
                order("BL-1").with(15, BRACKET, TWO_COAT),
                order("BL-2").with(12, BRACKET, BLACK));
        assertThat(moves.after().loads().mapToInt(OvenLoad::pieces).sum()).isEqualTo(2 * (15 + 7) + 12 + 3);
    }
}
