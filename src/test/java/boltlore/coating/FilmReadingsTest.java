package boltlore.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FilmReadingsTest {

    private static final String TABLE = "coating-thickness-acceptance.csv";

    static Stream<CheckRow> sets() {
        return CheckTable.rows(TABLE, "CT-01", "CT-02", "CT-03", "CT-04");
    }

    static Stream<CheckRow> lots() {
        return CheckTable.rows(
                TABLE, "CT-11", "CT-12", "CT-13", "CT-14", "CT-15", "CT-16", "CT-17", "CT-18", "CT-19", "CT-20");
    }

    private static List<BigDecimal> readings(CheckRow row) {
        return Stream.of(row.text("area_means_um").split(" ", -1))
                .map(BigDecimal::new)
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    @DisplayName("Five readings are accepted or rejected as the published examples are")
    void decision(CheckRow row) {
        FilmAcceptance acceptance =
                new FilmAcceptance(row.number("required_mean_um").intValueExact());
        assertThat(acceptance.accepts(readings(row)))
                .isEqualTo(row.text("expected_decision").equals("accept"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    @DisplayName("The mean of five readings")
    void mean(CheckRow row) {
        assertThat(FilmAcceptance.mean(readings(row)))
                .isCloseTo(row.number("expected_mean_um"), Offset.offset(row.number("tolerance_abs")));
    }

    @Test
    @DisplayName("The floor for 60 µm is 48 µm: 48 passes, 47.9 does not")
    void floor() {
        FilmAcceptance acceptance = new FilmAcceptance(60);
        assertThat(acceptance.floorUm()).isEqualByComparingTo("48");
        assertThat(acceptance.accepts(um("80", "80", "80", "80", "48"))).isTrue();
        assertThat(acceptance.accepts(um("80", "80", "80", "80", "47.9"))).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lots")
    @DisplayName("Pieces to read and how many may fall short, at both ends of each step of the table")
    void sample(CheckRow row) {
        for (String end : List.of("lot_size_from", "lot_size_to")) {
            int lot = row.number(end).intValueExact();
            ReadingSample sample = ReadingSample.of(lot);
            String pieces = row.text("expected_sample_size");
            assertThat(sample.pieces()).isEqualTo(pieces.equals("all") ? lot : Integer.parseInt(pieces));
            assertThat(sample.acceptUpTo())
                    .isEqualTo(row.number("expected_accept_up_to_defects").intValueExact());
        }
    }

    private static List<BigDecimal> um(String... readings) {
        return Stream.of(readings).map(BigDecimal::new).toList();
    }
}
