package boltlore.trades.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.MassLimit;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName(
        "An invented kit, part by part, comes to the loads that moments about the front axle give (textbook statics)")
class KitExampleTest {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("axle-loads.csv", ids);
    }

    /** Through a catalogue, an order and its bill. */
    private static Weighing weighing() {
        WeighedKit kit = new WeighedKit();
        for (CheckRow row : parts()) {
            int stationMm =
                    row.number("station_m_behind_front_axle").multiply(THOUSAND).intValueExact();
            String name = row.text("id");
            if (row.text("step").equals("remove")) {
                kit.removed(name, row.number("mass_kg").negate().toPlainString(), stationMm, null);
            } else if (row.text("step").equals("add")) {
                kit.added(name, row.text("mass_kg"), stationMm, null);
            }
        }
        return kit.weighing();
    }

    private static List<CheckRow> parts() {
        return CheckTable.all("axle-loads-kit-example.csv").toList();
    }

    private static OnAxles onAxles() {
        OnAxles onAxles = weighing().onAxles();
        assertThat(onAxles).isNotNull();
        return onAxles;
    }

    private static void close(BigDecimal found, CheckRow row, String column) {
        assertThat(found).isCloseTo(row.number(column), within(row.number("tolerance_abs")));
    }

    static Stream<String> moments() {
        return parts().stream().map(row -> row.text("id"));
    }

    @ParameterizedTest(name = "{0} [computed, textbook statics]")
    @MethodSource("moments")
    void moment_of_each_part(String id) {
        CheckRow row = parts().stream()
                .filter(part -> part.text("id").equals(id))
                .findFirst()
                .orElseThrow();
        Balance balance = Balance.of(row.number("mass_kg"), row.number("station_m_behind_front_axle"));
        close(balance.momentKgMm(), row, "expected_moment_kg_m");
    }

    static Stream<CheckRow> donor() {
        return rows("AL-05");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("donor")
    void the_donor_before_work(CheckRow row) {
        close(onAxles().donor().frontKg(), row, "expected_front_kg");
        close(onAxles().donor().rearKg(), row, "expected_rear_kg");
        close(onAxles().donor().totalKg(), row, "expected_total_kg");
        close(onAxles().donor().frontPercent(), row, "expected_front_share_pct");
    }

    static Stream<CheckRow> converted() {
        return rows("AL-06");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("converted")
    void the_converted_vehicle(CheckRow row) {
        AxleLoads loads = onAxles().converted();
        close(loads.frontKg(), row, "expected_front_kg");
        close(loads.rearKg(), row, "expected_rear_kg");
        close(loads.totalKg(), row, "expected_total_kg");
        close(loads.frontPercent(), row, "expected_front_share_pct");
        BigDecimal moment = Balance.of(loads, BigDecimal.valueOf(2400)).momentKgMm();
        close(moment.divide(THOUSAND), row, "expected_moment_kg_m");
    }

    static Stream<CheckRow> centre() {
        return rows("AL-10");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("centre")
    void its_centre_of_gravity(CheckRow row) {
        close(onAxles().centreAfterMm().divide(THOUSAND), row, "expected_cg_from_front_axle_m");
    }

    static Stream<CheckRow> limit() {
        return rows("AL-07");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limit")
    void its_mass_against_a_markets_limit(CheckRow row) {
        BigDecimal percent = row.number("mass_limit_ratio").movePointRight(2);
        Growth growth =
                new Growth(row.number("mass_before_kg"), row.number("total_kg"), new MassLimit(percent, "It is so."));
        close(growth.changePercent(), row, "expected_mass_change_pct");
        assertThat(growth.exceeded()).isEqualTo(!row.text("expected_decision").equals("within limit"));
    }

    static Stream<CheckRow> share() {
        return rows("AL-08");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("share")
    void least_share_in_front_where_a_family_wants_none(CheckRow row) {
        assertThat(FrontShare.USUAL_LEAST).isEqualByComparingTo(row.number("expected_front_share_pct"));
    }
}
