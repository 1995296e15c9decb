package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.findings.Severity;
import java.math.BigDecimal;
import java.time.LocalDate;
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
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(read(1, 1, readings(row))));
        assertThat(verdict.decision())
                .isEqualTo(
                        row.text("expected_decision").equals("accept")
                                ? FilmVerdict.Decision.ACCEPTED
                                : FilmVerdict.Decision.REJECTED);
    }

    @Test
    @DisplayName("Of 11 pieces 10 are read and one may fall short, two may not, and nine are too few")
    void lot() {
        assertThat(decision(11, 10, 0)).isEqualTo(FilmVerdict.Decision.ACCEPTED);
        assertThat(decision(11, 9, 1)).isEqualTo(FilmVerdict.Decision.REWORK);
        assertThat(decision(11, 8, 2)).isEqualTo(FilmVerdict.Decision.REJECTED);
        assertThat(decision(11, 9, 0)).isEqualTo(FilmVerdict.Decision.READ_MORE);
    }

    @Test
    @DisplayName("Two short pieces reject a batch although it is not read to the end")
    void rejected_early() {
        assertThat(decision(11, 1, 2)).isEqualTo(FilmVerdict.Decision.REJECTED);
    }

    @Test
    @DisplayName("A piece with a mean of 121 µm, or one reading of 121 µm, over at most 120 µm is not good; 120 µm is")
    void too_thick() {
        assertThat(piece("120", "120", "120", "120", "120").good()).isTrue();
        assertThat(found("121", "121", "121", "121", "121")).containsExactly(FilmFinding.MEAN_ABOVE_MAXIMUM);
        assertThat(found("120", "121", "119", "120", "120")).containsExactly(FilmFinding.READING_ABOVE_MAXIMUM);
        assertThat(FilmFinding.MEAN_ABOVE_MAXIMUM.severity()).isEqualTo(Severity.STOP);
    }

    @Test
    @DisplayName("One reading of 680 µm beside 68 µm, or of 6.8 µm, is asked back; 41 µm beside 68 µm is not")
    void slip() {
        assertThat(found("68", "68", "680", "68", "68")).contains(FilmFinding.SLIP_OF_TYPING);
        assertThat(found("68", "68", "6.8", "68", "68")).contains(FilmFinding.SLIP_OF_TYPING);
        assertThat(found("68", "68", "41", "68", "68")).doesNotContain(FilmFinding.SLIP_OF_TYPING);
        assertThat(found("680", "680", "680", "680", "680")).doesNotContain(FilmFinding.SLIP_OF_TYPING);
    }

    @Test
    void a_piece_rejected_by_eye_keeps_its_batch_from_being_accepted_though_its_film_is_good() {
        FilmReading seen = new FilmReading(SHEET, "P-1", "BL-1 1", 1, null, um("70", "70", "70", "70", "70"), "runs");
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(seen));
        assertThat(verdict.decision()).isEqualTo(FilmVerdict.Decision.REWORK);
        assertThat(verdict.findings().map(Finding::kind)).contains(FilmFinding.REJECTED_BY_EYE);
    }

    @Test
    void a_piece_coated_again_and_good_is_accepted_and_both_readings_are_kept() {
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(read(1, 2, GOOD), read(1, 1, THIN)));
        assertThat(verdict.decision()).isEqualTo(FilmVerdict.Decision.ACCEPTED);
        assertThat(verdict.pieces()).extracting(PieceVerdict::replaced).containsExactly(true, false);
        assertThat(verdict.findings()).isEmpty();
    }

    @Test
    void coated_again_and_still_thin_it_is_not() {
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(read(1, 1, GOOD), read(1, 2, THIN)));
        assertThat(verdict.decision()).isEqualTo(FilmVerdict.Decision.REJECTED);
    }

    @Test
    @DisplayName(
            "Two of ten that fell short tell of the eleventh, read or not: coated again the batch is free once it is read")
    void rejected_until_all_are_read() {
        List<FilmReading> readings = readings(8, 2);
        readings.add(read(8, 2, GOOD));
        readings.add(read(9, 2, GOOD));
        assertThat(FilmVerdict.of(batch(11), readings).decision()).isEqualTo(FilmVerdict.Decision.REJECTED);
        readings.add(read(10, 1, GOOD));
        assertThat(FilmVerdict.of(batch(11), readings).decision()).isEqualTo(FilmVerdict.Decision.ACCEPTED);
    }

    @Test
    void read_again_on_a_later_day_the_later_reading_counts_alone() {
        FilmReading first = new FilmReading(SHEET, "P-1", "BL-1 1", 1, LocalDate.parse("2026-06-01"), THIN, "");
        FilmReading later = new FilmReading(SHEET, "P-1", "BL-1 1", 1, LocalDate.parse("2026-06-02"), GOOD, "");
        FilmVerdict verdict = FilmVerdict.of(batch(1), List.of(later, first));
        assertThat(verdict.decision()).isEqualTo(FilmVerdict.Decision.ACCEPTED);
        assertThat(verdict.shortfalls()).isZero();
    }

    @Test
    void a_part_of_which_no_piece_was_read_is_named() {
        assertThat(FilmVerdict.of(batch(2), List.of()).unread()).containsExactly("P-1");
    }

    @Test
    void a_batch_of_which_nothing_was_read_stops() {
        FilmVerdict verdict = FilmVerdict.of(batch(2), List.of());
        assertThat(verdict.findings().map(Finding::kind)).containsExactly(FilmFinding.BATCH_NOT_READ);
        assertThat(FilmFinding.BATCH_NOT_READ.severity()).isEqualTo(Severity.STOP);
    }

    private static final FilmReading.Sheet SHEET = new FilmReading.Sheet("1", "", "", "F");
    private static final List<BigDecimal> GOOD = um("70", "70", "70", "70", "70");
    private static final List<BigDecimal> THIN = um("59", "59", "59", "59", "59");

    private static FilmReading read(int piece, int coating, List<BigDecimal> um) {
        return new FilmReading(SHEET, "P-1", "BL-1 " + piece, coating, null, um, "");
    }

    private static PieceVerdict piece(String... um) {
        return new PieceVerdict(read(1, 1, um(um)), FilmDemand.of(SampleShop.OWN_BLACK), false);
    }

    private static List<Kind> found(String... um) {
        return piece(um).findings(1).map(Finding::kind).toList();
    }

    private static List<FilmReading> readings(int good, int thin) {
        List<FilmReading> readings = new ArrayList<>();
        for (int i = 0; i < good + thin; i++) {
            readings.add(read(i, 1, i < good ? GOOD : THIN));
        }
        return readings;
    }

    private static FilmVerdict.Decision decision(int pieces, int good, int thin) {
        return FilmVerdict.of(batch(pieces), readings(good, thin)).decision();
    }

    private static OvenBatch batch(int pieces) {
        BatchRow row = SampleOrders.row(SampleShop.part("P-1", SampleShop.coat("0.1")), SampleShop.coat("0.1"), pieces);
        return new OvenBatch(1, SampleShop.OWN_BLACK, SampleShop.OVEN, List.of(row), List.of());
    }

    private static List<BigDecimal> um(String... readings) {
        return Stream.of(readings).map(BigDecimal::new).toList();
    }
}
