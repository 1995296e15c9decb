package boltlore.trades.coating;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.PowderCoat;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FilmMassTest {

    private static final BigDecimal UM_PER_MIL = new BigDecimal("25.4");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Exact by definition: 1 ft = 0.3048 m and 1 lb = 0.45359237 kg. */
    private static final BigDecimal FT2_PER_LB =
            new BigDecimal("0.45359237").divide(new BigDecimal("0.09290304"), MathContext.DECIMAL128);

    /** The inch tables take water at 62.4 lb/ft³; in kg/m³, over the 1000 that specific gravity stands for here. */
    private static final BigDecimal INCH_TABLES_WATER = new BigDecimal("62.4")
            .multiply(new BigDecimal("0.45359237"))
            .divide(new BigDecimal("28.316846592"), MathContext.DECIMAL128);

    static Stream<CheckRow> metricCoverage() {
        return CheckTable.rows("powder-coverage.csv", "PC-02", "PC-06", "PC-07", "PC-08", "PC-09", "PC-10");
    }

    static Stream<CheckRow> inchCoverage() {
        return CheckTable.rows("powder-coverage.csv", "PC-01", "PC-04", "PC-05");
    }

    static Stream<CheckRow> issues() {
        return CheckTable.rows("powder-coverage.csv", "PC-11");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("metricCoverage")
    @DisplayName("One kg of powder covers what the published tables say, in m²")
    void coverage_in_square_metres(CheckRow row) {
        assertThat(coverage(row, row.number("film_um")))
                .isCloseTo(row.number("expected_coverage_m2_per_kg"), Offset.offset(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("inchCoverage")
    @DisplayName("The inch tables of the trade give the same coverage")
    void coverage_in_square_feet(CheckRow row) {
        BigDecimal filmUm = row.number("film_mil").multiply(UM_PER_MIL);
        BigDecimal coverage = coverage(row, filmUm).multiply(FT2_PER_LB);
        assertThat(coverage.divide(INCH_TABLES_WATER, MathContext.DECIMAL128))
                .isCloseTo(row.number("expected_coverage_ft2_per_lb"), Offset.offset(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("issues")
    @DisplayName("The film on the parts weighs area × SG × µm / 1000")
    void film(CheckRow row) {
        assertThat(FilmMass.film(row.number("area_m2"), coats(row)))
                .isCloseTo(row.number("expected_film_mass_kg"), Offset.offset(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("issues")
    @DisplayName("The powder to issue is the film divided by the utilisation")
    void issue(CheckRow row) {
        assertThat(FilmMass.issue(row.number("area_m2"), coats(row)))
                .isCloseTo(row.number("expected_powder_issue_kg"), Offset.offset(row.number("tolerance_abs")));
    }

    @Test
    void a_second_coat_adds_its_own_film() {
        BigDecimal area = new BigDecimal("2");
        assertThat(FilmMass.film(area, SampleShop.OWN_TWO_COAT))
                .isEqualByComparingTo(
                        FilmMass.film(area, SampleShop.PRIMER).add(FilmMass.film(area, SampleShop.BLACK)));
    }

    @Test
    void a_part_that_is_not_coated_carries_no_film() {
        assertThat(FilmMass.compute(SampleShop.part("P-1", null), SampleShop.OWN_BLACK))
                .isZero();
    }

    @Test
    void a_coated_part_carries_film_on_its_whole_area() {
        assertThat(FilmMass.compute(SampleShop.part("P-1", SampleShop.coat("0.5")), SampleShop.OWN_BLACK))
                .isEqualByComparingTo("0.060");
    }

    private static BigDecimal coverage(CheckRow row, BigDecimal filmUm) {
        return FilmMass.coverageM2PerKg(row.number("specific_gravity"), filmUm)
                .multiply(row.number("transfer_efficiency_pct"))
                .divide(HUNDRED, MathContext.DECIMAL128);
    }

    private static PowderCoat coats(CheckRow row) {
        return new PowderCoat(
                "POWDER",
                row.number("specific_gravity"),
                0,
                row.number("film_um").intValueExact(),
                0,
                180,
                15,
                row.number("transfer_efficiency_pct"));
    }
}
