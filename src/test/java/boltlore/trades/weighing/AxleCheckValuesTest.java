package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Axle loads agree with Vehicle Dynamics: Theory and Application, chapter 2, and with a moment table")
class AxleCheckValuesTest {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("axle-loads.csv", ids);
    }

    private static BigDecimal mm(CheckRow row, String column) {
        return row.number(column).multiply(THOUSAND);
    }

    private static void close(BigDecimal found, CheckRow row, String column) {
        assertThat(found).isCloseTo(row.number(column), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> fromWheelLoads() {
        return rows("AL-01");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fromWheelLoads")
    void centre_of_gravity_from_the_loads_under_the_wheels(CheckRow row) {
        BigDecimal wheelbaseMm = mm(row, "wheelbase_m");
        AxleLoads loads = new AxleLoads(row.number("front_wheel_load_n"), row.number("rear_wheel_load_n"));
        BigDecimal behindFrontMm = Balance.of(loads, wheelbaseMm).centreMm();
        close(behindFrontMm.divide(THOUSAND), row, "expected_a1_m");
        close(wheelbaseMm.subtract(behindFrontMm).divide(THOUSAND), row, "expected_a2_m");
    }

    static Stream<CheckRow> fromCentre() {
        return rows("AL-02");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fromCentre")
    void axle_loads_from_the_centre_of_gravity(CheckRow row) {
        AxleLoads loads = Balance.of(row.number("total_kg"), mm(row, "a1_m")).on(mm(row, "wheelbase_m"));
        close(loads.frontKg(), row, "expected_front_kg");
        close(loads.rearKg(), row, "expected_rear_kg");
        close(loads.frontKg().multiply(row.number("gravity_m_per_s2")), row, "expected_front_n");
        close(loads.rearKg().multiply(row.number("gravity_m_per_s2")), row, "expected_rear_n");
    }

    static Stream<CheckRow> fromRatio() {
        return rows("AL-03");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fromRatio")
    void axle_loads_from_the_ratio_of_the_distances(CheckRow row) {
        BigDecimal ratio = row.number("a1_over_a2");
        BigDecimal behindFront = ratio.divide(ratio.add(BigDecimal.ONE), MathContext.DECIMAL128);
        AxleLoads loads = Balance.of(row.number("total_lb"), behindFront).on(BigDecimal.ONE);
        close(loads.frontKg(), row, "expected_front_lb");
        close(loads.rearKg(), row, "expected_rear_lb");
    }

    static Stream<CheckRow> fromTable() {
        return rows("AL-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fromTable")
    void axle_loads_from_a_table_of_loads_measured_from_the_rear_axle(CheckRow row) {
        BigDecimal wheelbaseCm = row.number("wheelbase_cm");
        Balance all = Arrays.stream(
                        row.text("loads_kg_at_cm_ahead_of_rear_axle").split("; ", -1))
                .map(load -> load.split("@", -1))
                .map(load -> Balance.of(new BigDecimal(load[0]), wheelbaseCm.subtract(new BigDecimal(load[1]))))
                .reduce(Balance.NONE, Balance::plus);
        close(all.on(wheelbaseCm).frontKg(), row, "expected_front_kg");
        close(all.on(wheelbaseCm).rearKg(), row, "expected_rear_kg");
        close(all.massKg(), row, "expected_total_kg");
        BigDecimal aboutRear = all.massKg().multiply(wheelbaseCm).subtract(all.momentKgMm());
        close(aboutRear, row, "expected_moment_kg_cm");
    }
}
