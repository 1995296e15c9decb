package boltlore.trades.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import boltlore.catalogue.Fixing;
import boltlore.catalogue.JointFacts.Into;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Threads, strengths, torques and counts agree with ISO 898-1, tables after VDI 2230 and common practice")
class FastenerCheckValuesTest {

    private static final int KILO = 3;

    private static Stream<CheckRow> rows(int from, int to) {
        return CheckTable.rows(
                "fasteners.csv",
                IntStream.rangeClosed(from, to)
                        .mapToObj(row -> String.format(Locale.ROOT, "FA-%02d", row))
                        .toArray(String[]::new));
    }

    private static ScrewThread thread(CheckRow row) {
        return ScrewThread.of(row.text("thread")).orElseThrow();
    }

    private static PropertyClass propertyClass(CheckRow row) {
        return PropertyClass.of(row.text("property_class").split(" ", -1)[0]).orElseThrow();
    }

    private static Tightening tightening(CheckRow row) {
        return new Tightening(thread(row), propertyClass(row), row.number("friction_coefficient"));
    }

    static Stream<CheckRow> strengths() {
        return rows(1, 4);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("strengths")
    void a_property_class_has_its_strengths(CheckRow row) {
        BigDecimal diameter = new BigDecimal(row.text("property_class").contains("> 16") ? "20" : "16");

        assertThat(propertyClass(row).strength(diameter))
                .isEqualTo(new PropertyClass.Strength(
                        row.number("proof_stress_mpa").intValueExact(),
                        row.number("yield_mpa").intValueExact(),
                        row.number("tensile_mpa").intValueExact()));
    }

    static Stream<CheckRow> proofLoads() {
        return rows(5, 12);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("proofLoads")
    void the_proof_load_is_stress_area_times_proof_stress(CheckRow row) {
        assertThat(thread(row).stressAreaMm2()).isCloseTo(row.number("stress_area_mm2"), within(new BigDecimal("0.1")));
        assertThat(propertyClass(row).proofLoadNewton(thread(row)).movePointLeft(KILO))
                .isCloseTo(row.number("expected_proof_load_kn"), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> torques() {
        return rows(13, 33);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("torques")
    void the_sizes_of_a_thread_follow_from_diameter_and_pitch(CheckRow row) {
        BigDecimal close = new BigDecimal("0.001");

        assertThat(thread(row).pitchMm()).isEqualByComparingTo(row.number("pitch_mm"));
        assertThat(thread(row).pitchDiameterMm()).isCloseTo(row.number("pitch_diameter_mm"), within(close));
        assertThat(thread(row).coreMm()).isCloseTo(row.number("core_diameter_mm"), within(close));
        assertThat(thread(row).bearingMm())
                .hasValueSatisfying(mm -> assertThat(mm).isEqualByComparingTo(row.number("friction_diameter_mm")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("torques")
    void preload_and_torque_are_those_of_the_table(CheckRow row) {
        double percent = row.number("tolerance_pct").doubleValue();

        assertThat(tightening(row).torqueNm())
                .hasValueSatisfying(torque ->
                        assertThat(torque).isCloseTo(row.number("expected_torque_nm"), withinPercentage(percent)));
        if (row.has("expected_preload_kn")) {
            assertThat(tightening(row).preloadNewton().movePointLeft(KILO))
                    .isCloseTo(row.number("expected_preload_kn"), withinPercentage(percent));
        }
    }

    static Stream<CheckRow> scatter() {
        return rows(34, 34);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scatter")
    void scatter_leaves_the_preload_divided_by_the_tightening_factor(CheckRow row) {
        assertThat(Tightening.afterScatter(tightening(row).preloadNewton(), row.number("tightening_factor"))
                        .movePointLeft(KILO))
                .isCloseTo(row.number("expected_value"), within(row.number("tolerance_abs")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scatter")
    void the_factor_of_the_worked_calculation_is_that_of_the_sheet(CheckRow row) {
        assertThat(Tightening.WRENCH).isEqualByComparingTo(row.number("tightening_factor"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("torques")
    void the_torque_of_a_preload_gives_that_preload_again(CheckRow row) {
        BigDecimal torque = tightening(row).torqueNm().orElseThrow();

        assertThat(tightening(row).preloadNewton(torque))
                .hasValueSatisfying(newton ->
                        assertThat(newton).isCloseTo(tightening(row).preloadNewton(), within(new BigDecimal("0.001"))));
    }

    static Stream<CheckRow> disagreement() {
        return rows(35, 35);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("disagreement")
    void usual_frictions_give_torques_that_differ_as_the_public_tables_do(CheckRow row) {
        String[] range = row.text("expected_value").split(" to ", -1);
        Stream.of("0.11", "0.12", "0.14")
                .map(friction -> new Tightening(thread(row), propertyClass(row), new BigDecimal(friction)))
                .forEach(tightening -> assertThat(tightening.torqueNm())
                        .hasValueSatisfying(torque ->
                                assertThat(torque).isBetween(new BigDecimal(range[0]), new BigDecimal(range[1]))));
    }

    static Stream<CheckRow> engagement() {
        return rows(41, 43);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("engagement")
    void engagement_is_a_multiple_of_the_diameter(CheckRow row) {
        String material = row.text("check").replace("thread engagement in ", "").replace(' ', '_');
        Into into = Into.valueOf(material.toUpperCase(Locale.ROOT));

        assertThat(Engagement.leastDiameters(into))
                .isEqualByComparingTo(row.text("expected_value").split(" to ", -1)[0]);
    }

    static Stream<CheckRow> proud() {
        return rows(44, 44);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("proud")
    void two_threads_stand_proud_of_the_nut(CheckRow row) {
        assertThat(row.text("expected_value")).startsWith("2");
        // M8: nut of 8 mm and two threads of 1.25 mm.
        assertThat(Jointed.with("33.5").into(Into.NUT, "23", null).findings()).isEmpty();
        assertThat(Jointed.with("33.4").into(Into.NUT, "23", null).findings())
                .singleElement()
                .satisfies(found -> assertThat(found.says()).contains("two threads proud take 10.5 mm"));
    }

    static Stream<CheckRow> weighed() {
        return rows(45, 45);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("weighed")
    void a_count_by_weight_is_sure_below_one_half_divided_by_the_count(CheckRow row) {
        BigDecimal count = row.number("pieces_needed");

        assertThat(CountByWeight.surePercent(count)).isEqualByComparingTo(row.number("expected_value"));
        assertThat(CountByWeight.count(new BigDecimal("1570"), new BigDecimal("50"), new BigDecimal("15.2")))
                .contains(100);
        assertThat(CountByWeight.sure(count, new BigDecimal("0.0152"))).isTrue();
        assertThat(CountByWeight.sure(count, new BigDecimal("0.0101"))).isTrue();
        assertThat(CountByWeight.sure(count, new BigDecimal("0.0100"))).isFalse();
    }

    static Stream<CheckRow> leastClass() {
        return rows(46, 46);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("leastClass")
    void a_joint_to_sign_for_takes_the_least_class_and_no_stainless_steel(CheckRow row) {
        String least = row.text("property_class");

        assertThat(Jointed.of(fixing(least)).safety().findings()).isEmpty();
        assertThat(Jointed.of(fixing("10.9")).safety().findings()).isEmpty();
        assertThat(Jointed.of(fixing("5.6")).safety().findings())
                .extracting(found -> found.kind())
                .contains(FixingFinding.BOLT_CLASS_TOO_LOW)
                .doesNotContain(FixingFinding.BOLT_NOT_KNOWN);
        for (String lower : new String[] {"A2-70", "A4-80"}) {
            assertThat(Jointed.of(fixing(lower)).safety().findings())
                    .extracting(found -> found.kind())
                    .containsExactly(FixingFinding.BOLT_CLASS_TOO_LOW, FixingFinding.BOLT_NOT_KNOWN);
            assertThat(Jointed.of(fixing(lower)).findings())
                    .extracting(found -> found.kind())
                    .containsExactly(FixingFinding.BOLT_NOT_KNOWN);
        }
    }

    private static Fixing fixing(String propertyClass) {
        return new Fixing(
                "M8",
                BigDecimal.valueOf(25),
                propertyClass,
                new BigDecimal(propertyClass.equals("10.9") ? "36" : "24.6"),
                "to VDI 2230",
                new BigDecimal("0.12"),
                Wording.english("medium strength"),
                null);
    }
}
