package boltlore.trades.picking;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Part;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SparesTest {

    static Stream<CheckRow> spares() {
        return CheckTable.rows("fasteners.csv", "FA-36", "FA-37", "FA-38", "FA-39", "FA-40");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spares")
    @DisplayName("A bag gets the larger of one and 5 % rounded up")
    void by_common_practice(CheckRow row) {
        assertThat(inBag(bolt("M8"), row.number("pieces_needed"))).isEqualByComparingTo(row.number("expected_spares"));
    }

    @ParameterizedTest
    @CsvSource({"M5, 1", "M8, 1", "M8x1, 1", "M10, 0", "M10x1.25, 0", "3/8-16, 0"})
    void only_threads_up_to_M8_get_spares(String thread, String spares) {
        assertThat(inBag(bolt(thread), BigDecimal.TEN)).isEqualByComparingTo(spares);
    }

    @Test
    void what_is_no_fixing_gets_none() {
        Part clip = PartSketch.bought("CL-1").draw();
        assertThat(inBag(clip, BigDecimal.TEN)).isZero();
    }

    @Test
    void studding_by_the_metre_gets_none() {
        Part studding = PartSketch.bolt("ST-1", "M8", null).unit("m").draw();
        assertThat(inBag(studding, BigDecimal.TEN)).isZero();
    }

    @Test
    void a_bag_with_none_gets_none() {
        assertThat(inBag(bolt("M8"), BigDecimal.ZERO)).isZero();
    }

    @Test
    void a_washer_that_comes_with_a_small_bolt_gets_them_too() {
        Part washer = PartSketch.bought("FX-W8").draw();
        Part other = PartSketch.bought("FX-W10").draw();
        Part small = PartSketch.bolt("FX-8", "M8", null)
                .needs(PositionSketch.each("FX-W8", "1"))
                .draw();
        Part large = PartSketch.bolt("FX-10", "M10", null)
                .needs(PositionSketch.each("FX-W10", "1"))
                .draw();
        Spares spares = new Spares(Stream.of(small, large, washer, other));
        assertThat(spares.inBag(washer, BigDecimal.TEN)).isEqualByComparingTo("1");
        assertThat(spares.inBag(other, BigDecimal.TEN)).isZero();
    }

    private static BigDecimal inBag(Part part, BigDecimal quantity) {
        return new Spares(Stream.of(part)).inBag(part, quantity);
    }

    private static Part bolt(String thread) {
        return PartSketch.bolt("FX-1", thread, null).draw();
    }
}
