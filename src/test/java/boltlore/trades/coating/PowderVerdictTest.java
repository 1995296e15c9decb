package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** 6 kg of film, and 10 kg by theory. */
class PowderVerdictTest {

    private static final PowderRun RUN = new PowderRun(1, "PB-BLACK", "booth", null, List.of());

    static Stream<CheckRow> usual() {
        return CheckTable.rows("powder-coverage.csv", "PC-12", "PC-13", "PC-15");
    }

    static Stream<CheckRow> claims() {
        return CheckTable.rows("powder-coverage.csv", "PC-14");
    }

    private static PowderVerdict verdict(String issuedKg) {
        return PowderVerdict.of(RUN, BigDecimal.valueOf(6), BigDecimal.TEN, new BigDecimal(issuedKg));
    }

    /** Issued so that this share of it is the film. */
    private static PowderVerdict onParts(BigDecimal percent) {
        BigDecimal issued = BigDecimal.valueOf(600).divide(percent, MathContext.DECIMAL128);
        return PowderVerdict.of(RUN, BigDecimal.valueOf(6), issued, issued);
    }

    private static List<Kind> found(String issuedKg) {
        return verdict(issuedKg).findings().map(Finding::kind).toList();
    }

    @Test
    @DisplayName("What is usual is no finding; too much, too little and what can hardly be are one each")
    void findings() {
        assertThat(found("11.5")).isEmpty();
        assertThat(found("11.6")).containsExactly(FilmFinding.POWDER_ABOVE_THEORETICAL);
        assertThat(found("8.4")).containsExactly(FilmFinding.POWDER_BELOW_THEORETICAL);
        assertThat(found("7")).containsExactly(FilmFinding.POWDER_HARDLY_POSSIBLE);
    }

    @Test
    @DisplayName("11.5 kg are 15 % more and usual, 11.6 kg are not")
    void more() {
        assertThat(verdict("11.5").differencePercent()).isEqualByComparingTo("15");
        assertThat(verdict("11.5").unusual()).isFalse();
        assertThat(verdict("11.6").unusual()).isTrue();
    }

    @Test
    @DisplayName("8.5 kg are 15 % less and usual, 8.4 kg are not")
    void less() {
        assertThat(verdict("8.5").unusual()).isFalse();
        assertThat(verdict("8.4").unusual()).isTrue();
    }

    @Test
    @DisplayName("7 kg for 6 kg of film: 86 % on the parts are hardly possible")
    void hardly_possible() {
        assertThat(verdict("7").hardlyPossible()).isTrue();
        assertThat(verdict("7.1").hardlyPossible()).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("usual")
    void what_is_published_as_usual_is_not_questioned(CheckRow row) {
        assertThat(onParts(row.number("expected_min_pct")).unusual()).isFalse();
        assertThat(onParts(row.number("expected_max_pct")).unusual()).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("claims")
    void what_another_article_calls_not_realistic_is(CheckRow row) {
        assertThat(onParts(row.number("expected_min_pct")).hardlyPossible()).isTrue();
    }
}
