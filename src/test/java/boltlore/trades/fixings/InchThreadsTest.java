package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.ThreadName;
import boltlore.findings.Finding;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Inch bolts are judged like metric ones")
class InchThreadsTest {

    private static final BigDecimal SQUARE_INCH_MM2 = new BigDecimal("645.16");

    /** UNF: public table of boltport.com/threads/unf; UNC: formulafactory.tools, unified thread dimensions. */
    @ParameterizedTest
    @CsvSource({
        "1/4-28 UNF, 0.0364",
        "5/16-24 UNF, 0.0580",
        "3/8-24 UNF, 0.0878",
        "7/16-20 UNF, 0.1187",
        "1/2-20 UNF, 0.1599",
        "9/16-18 UNF, 0.203",
        "5/8-18 UNF, 0.256",
        "3/4-16 UNF, 0.373",
        "1-12 UNF, 0.663",
        "#10-32 UNF, 0.0200",
        "#10-24 UNC, 0.0175",
        "1/4-20 UNC, 0.0318",
        "7/16-14 UNC, 0.1063",
        "1/2-13 UNC, 0.1419",
        "3/4-10 UNC, 0.334"
    })
    void the_stress_area_is_that_of_the_published_table(String thread, BigDecimal squareInches) {
        BigDecimal mm2 = ScrewThread.of(thread).orElseThrow().stressAreaMm2();

        assertThat(mm2).isCloseTo(squareInches.multiply(SQUARE_INCH_MM2), withinPercentage(0.3));
    }

    /** Pitch diameter in inches of the same UNF table. */
    @ParameterizedTest
    @CsvSource({"1/4-28 UNF, 0.2268", "7/16-20 UNF, 0.4050", "1/2-20 UNF, 0.4675", "3/4-16 UNF, 0.7094"})
    void so_is_the_pitch_diameter(String thread, BigDecimal inches) {
        assertThat(ScrewThread.of(thread).orElseThrow().pitchDiameterMm())
                .isCloseTo(inches.multiply(new BigDecimal("25.4")), within(new BigDecimal("0.003")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7/16-21",
                "7/16-14 UNF",
                "7/16-20 UNC",
                "7/16 UNF",
                "1/3-20 UNF",
                "1/0-20 UNF",
                "#99-32 UNF",
                "1/4-18 NPT",
                "G 1/4"
            })
    void what_is_no_thread_of_a_series_is_not_read(String written) {
        assertThat(ScrewThread.of(written)).isEmpty();
    }

    /** Diameter and threads to the inch say which series it is; 24 to the inch is the fine one of 3/8, 16 the coarse one. */
    @ParameterizedTest
    @CsvSource({"3/8-24, 3/8-24 UNF", "3/8-16, 3/8-16 UNC", "7/16-20, 7/16-20 UNF", "M8x1.25, M8"})
    void a_thread_written_in_another_way_is_the_same_thread(String written, String inFull) {
        assertThat(ScrewThread.of(written)).isEqualTo(ScrewThread.of(inFull)).isPresent();
        assertThat(ThreadName.mate(written, inFull)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"3/8-24 UNF, 3/8-16 UNC", "1/2-20 UNF, 1/2-13 UNC", "M8, M8x1", "M8, 5/16-18 UNC"})
    void a_fine_thread_does_not_go_into_a_coarse_one_nor_inch_into_metric(String bolt, String nut) {
        assertThat(ThreadName.mate(bolt, nut)).isFalse();
        assertThat(ThreadName.mate(nut, bolt)).isFalse();
        assertThat(ThreadName.mate(bolt, bolt)).isTrue();
    }

    /** SAE J429 as published in psi by china-bolts.com; 1 psi is 0.00689476 MPa. */
    @ParameterizedTest
    @CsvSource({
        "grade 2, 0.75, 55000, 57000, 74000",
        "grade 2, 1, 33000, 36000, 60000",
        "grade 5, 1, 85000, 92000, 120000",
        "grade 5, 1.125, 74000, 81000, 105000",
        "grade 8, 1.5, 120000, 130000, 150000"
    })
    void a_grade_has_its_strengths(String grade, BigDecimal inches, double proof, double yield, double tensile) {
        PropertyClass.Strength strength =
                PropertyClass.of("SAE J429 " + grade).orElseThrow().strength(inches.multiply(new BigDecimal("25.4")));

        double mpa = 0.00689476;
        assertThat((double) strength.proof()).isCloseTo(proof * mpa, within(0.6));
        assertThat((double) strength.yield()).isCloseTo(yield * mpa, within(0.6));
        assertThat((double) strength.tensile()).isCloseTo(tensile * mpa, within(0.6));
    }

    @Test
    void a_grade_may_be_written_short() {
        assertThat(PropertyClass.of("grade 5"))
                .isEqualTo(PropertyClass.of("SAE grade 5"))
                .isPresent();
        assertThat(PropertyClass.of("grade 6")).isEmpty();
        assertThat(PropertyClass.of("5")).isEmpty();
    }

    /** By hand: As 76.59 mm², 0.9 × 634 MPa, friction 0.12: 39.4 kN and 67.7 Nm; 80 % of it are 54.2 Nm, 110 % are 74.5 Nm. */
    @ParameterizedTest
    @CsvSource({"68, true", "54.1, false", "54.3, false", "74.6, false", "6.8, false"})
    void its_torque_lies_within_the_same_window(String torqueNm, boolean fits) {
        assertThat(Jointed.of(bolt("SAE J429 grade 5", torqueNm)).findings().isEmpty())
                .isEqualTo(fits);
    }

    @Test
    void what_is_signed_for_takes_grade_5_at_least() {
        assertThat(Jointed.of(bolt("grade 5", "68")).safety().findings()).isEmpty();
        assertThat(Jointed.of(bolt("grade 2", "42")).safety().findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.BOLT_CLASS_TOO_LOW);
    }

    @Test
    void a_nut_of_a_lower_grade_is_too_weak_and_one_of_another_system_is_not_compared() {
        assertThat(Jointed.of(bolt("grade 8", "95")).nut("SAE J995 grade 8").findings())
                .isEmpty();
        assertThat(Jointed.of(bolt("grade 8", "95")).nut("grade 5").findings())
                .extracting(Finding::kind)
                .containsExactly(FixingFinding.NUT_CLASS_TOO_LOW);
    }

    private static Fixing bolt(String grade, String torqueNm) {
        return new Fixing(
                "7/16-20 UNF",
                BigDecimal.valueOf(40),
                grade,
                new BigDecimal(torqueNm),
                "to VDI 2230",
                new BigDecimal("0.12"),
                Wording.english("medium strength"),
                null);
    }
}
