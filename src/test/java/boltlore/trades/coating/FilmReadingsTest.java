package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.ArrayList;
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

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    @DisplayName("A batch of one piece, all of it read, is accepted or rejected as the published examples are")
    void batch_of_one(CheckRow row) {
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(new FilmReading(1, "P-1", "", readings(row))));
        assertThat(verdict.decision())
                .isEqualTo(
                        row.text("expected_decision").equals("accept")
                                ? FilmVerdict.Decision.ACCEPTED
                                : FilmVerdict.Decision.REJECTED);
    }

    @Test
    @DisplayName("Of 11 pieces 10 are read and one may fall short, two may not, and nine are too few")
    void lot() {
        assertThat(decision(11, 9, 1)).isEqualTo(FilmVerdict.Decision.ACCEPTED);
        assertThat(decision(11, 8, 2)).isEqualTo(FilmVerdict.Decision.REJECTED);
        assertThat(decision(11, 9, 0)).isEqualTo(FilmVerdict.Decision.READ_MORE);
    }

    @Test
    @DisplayName("Two short pieces reject a batch although it is not read to the end")
    void rejected_early() {
        assertThat(decision(11, 1, 2)).isEqualTo(FilmVerdict.Decision.REJECTED);
    }

    @Test
    @DisplayName("A mean of 121 µm over at most 120 µm is good, and told to engineering; 120 µm is not told")
    void too_thick() {
        FilmDemand demand = FilmDemand.of(SampleShop.OWN_BLACK);
        assertThat(PieceVerdict.of(new FilmReading(1, "P-1", "", um("121")), demand)
                        .tooThick())
                .isTrue();
        assertThat(PieceVerdict.of(new FilmReading(1, "P-1", "", um("121")), demand)
                        .good())
                .isTrue();
        assertThat(PieceVerdict.of(new FilmReading(1, "P-1", "", um("120")), demand)
                        .tooThick())
                .isFalse();
    }

    @Test
    void a_part_of_which_no_piece_was_read_is_named() {
        assertThat(FilmVerdict.of(batch(2), List.of()).unread()).containsExactly("P-1");
    }

    private static FilmVerdict.Decision decision(int pieces, int good, int shortOf) {
        List<FilmReading> readings = new ArrayList<>();
        for (int i = 0; i < good + shortOf; i++) {
            readings.add(new FilmReading(1, "P-1", "", um(i < good ? "70" : "59")));
        }
        return FilmVerdict.of(batch(pieces), readings).decision();
    }

    private static OvenBatch batch(int pieces) {
        BatchRow row = SampleOrders.row(SampleShop.part("P-1", SampleShop.coat("0.1")), SampleShop.coat("0.1"), pieces);
        return new OvenBatch(1, SampleShop.OWN_BLACK, SampleShop.OVEN, List.of(row), List.of());
    }

    private static List<BigDecimal> um(String... readings) {
        return Stream.of(readings).map(BigDecimal::new).toList();
    }
}
