package boltlore.trades.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Bending;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("By published values")
class CuttingCheckValuesTest {

    static Stream<CheckRow> bars() {
        return CheckTable.rows("cutting-list.csv", "CL-01", "CL-02", "CL-03", "CL-04");
    }

    static Stream<CheckRow> bends() {
        return CheckTable.rows("cutting-list.csv", "CL-05");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bars")
    @DisplayName("so many bars are cut, and no fewer would do")
    void bars(CheckRow row) {
        MaterialCuts cuts = rack(row).plan();
        assertThat(cuts.bars()).hasSize(row.number("expected_bars").intValueExact());
        assertThat(cuts.proven()).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bars")
    @DisplayName("the pieces on all bars add up to what was asked for")
    void sums(CheckRow row) {
        assertThat(rack(row).plan().bars().stream().map(SawnBar::piecesMm).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(row.number("expected_sum_of_pieces"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bends")
    @DisplayName("a bend takes so much sheet")
    void bends(CheckRow row) {
        Bending bending = new Bending(row.number("inner_radius_mm"), row.number("k_factor"));
        assertThat(bending.allowanceMm(row.number("angle_deg"), row.number("sheet_mm")))
                .isCloseTo(row.number("expected_length_mm"), Offset.offset(row.number("tolerance_abs")));
    }

    private static Rack rack(CheckRow row) {
        Rack rack = new Rack().bar(row.number("stock_length").intValueExact(), "1");
        rack.saw(row.text("kerf"), row.text("head_trim"));
        for (String pieces : row.text("pieces").split("; ", -1)) {
            String[] lengthAndCount = pieces.split(" x ", -1);
            rack.pieces(Integer.parseInt(lengthAndCount[1]), lengthAndCount[0]);
        }
        return rack;
    }
}
