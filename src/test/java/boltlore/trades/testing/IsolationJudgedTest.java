package boltlore.trades.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.trades.charging.Bonding;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Readings are judged as UN Regulation 100 measures")
class IsolationJudgedTest {

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("isolation-and-bonding.csv", ids);
    }

    static Stream<CheckRow> measured() {
        return rows("IB-09");
    }

    private static TestedRow isolation(CheckRow row) {
        BigDecimal limitOhm = row.number("limit_ohm_per_v").multiply(row.number("pack_nominal_v"));
        return TestedRow.isolation(limitOhm.movePointLeft(3).toPlainString(), limitOhm.toPlainString());
    }

    private static TestedRow measured(CheckRow row) {
        String kohm = row.number("inserted_resistor_ohm").movePointLeft(3).toPlainString();
        return isolation(row)
                .measured(row.text("measured_pack_v"), row.text("v1_v"), row.text("v1_with_resistor_v"), kohm, "10");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("measured")
    void two_voltages_and_a_resistor_give_the_isolation(CheckRow row) {
        JudgedRow judged = measured(row).judged();
        assertThat(judged.result())
                .isCloseTo(row.number("expected_isolation_ohm").movePointLeft(3), within(row.number("tolerance_abs")));
        assertThat(judged.judgement().passed())
                .isEqualTo(row.text("expected_decision").equals("pass"));
    }

    @Test
    void a_pack_that_leaks_fails_by_what_is_missing() {
        // By hand: 200 kohm × 400 V × (1/180 V - 1/250 V) = 124.4 kohm, 75.6 kohm short of 200 kohm.
        Judgement judgement = TestedRow.isolation("200", "200000")
                .measured("400", "250", "180", "200", "10")
                .judgement();
        assertThat(judgement)
                .isInstanceOfSatisfying(
                        Judgement.Failed.class,
                        failed -> assertThat(failed.by()).isEqualByComparingTo("75.6"));
    }

    @ParameterizedTest
    @CsvSource({
        "400, 250, 100, 200, 9.9, METER_LOADS_THE_BUS",
        "400, 250, 100, 159, 10, RESISTOR_UNSUITED",
        "400, 250, 250, 200, 10, VOLTAGE_DID_NOT_FALL",
        "400, 401, 100, 200, 10, MORE_THAN_THE_PACK",
        "400, 250, 0, 200, 10, NOT_ABOVE_ZERO"
    })
    void readings_that_are_good_for_nothing_are_not_judged(
            String vb, String v1, String withResistor, String kohm, String mohm, Flaw.Kind kind) {
        TestedRow row = TestedRow.isolation("200", "200000").measured(vb, v1, withResistor, kohm, mohm);
        assertThat(row.flaws()).containsExactly(kind);
    }

    @Test
    void a_resistor_just_within_a_fifth_of_what_suits_is_good() {
        assertThat(TestedRow.isolation("200", "200000")
                        .measured("400", "250", "100", "160", "10")
                        .flaws())
                .isEmpty();
    }

    static Stream<CheckRow> bonding() {
        return rows("IB-01");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bonding")
    void bonding_passes_below_the_limit_only(CheckRow row) {
        Figure figure = PackRules.bonding();
        assertThat(figure.value()).isEqualByComparingTo(row.number("expected_limit_ohm"));
        assertThat(figure.itselfFails()).isTrue();
        assertThat(PackRules.bondingAmps().value()).isEqualByComparingTo(row.number("test_current_a"));
        Limit limit = new Limit.Below(Bonding.LIMIT_OHM);
        assertThat(limit.keeps(new BigDecimal("0.099"))).isTrue();
        assertThat(limit.keeps(row.number("expected_limit_ohm"))).isFalse();
    }

    static Stream<CheckRow> gate() {
        return rows("IB-14");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("gate")
    void the_main_contactor_closes_at_that_share_or_above(CheckRow row) {
        assertThat(PackRules.prechargeVolts().value())
                .isEqualByComparingTo(row.number("precharge_fraction").movePointRight(2));
    }
}
