package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FilmGrowthTest {

    private static final String TABLE = "coating-thickness-acceptance.csv";

    static Stream<CheckRow> threads() {
        return CheckTable.rows(TABLE, "CT-28");
    }

    static Stream<CheckRow> holes() {
        return CheckTable.rows(TABLE, "CT-29");
    }

    static Stream<CheckRow> allowances() {
        return CheckTable.rows(TABLE, "CT-30");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("threads")
    void a_thread_grows_by_four_films(CheckRow row) {
        assertThat(FilmGrowth.threadMm(row.number("film_um").intValueExact()))
                .isCloseTo(row.number("expected_value_mm"), Offset.offset(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("holes")
    void a_hole_loses_two_films(CheckRow row) {
        assertThat(FilmGrowth.holeMm(
                        row.number("bare_size_mm"), row.number("film_um").intValueExact()))
                .isCloseTo(row.number("expected_value_mm"), Offset.offset(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("allowances")
    @DisplayName("The allowance of 28 µm on an M8 thread is used up by a film of 7 µm")
    void an_allowance(CheckRow row) {
        assertThat(FilmGrowth.filmForAllowanceUm(row.number("expected_value_mm")))
                .isEqualByComparingTo(BigDecimal.valueOf(7));
    }
}
