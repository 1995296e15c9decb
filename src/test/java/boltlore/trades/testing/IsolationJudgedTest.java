package boltlore.trades.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.trades.charging.Bonding;
import java.math.BigDecimal;
import java.util.List;
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

    private static TestedRow limited(CheckRow row) {
        BigDecimal limitOhm = row.number("limit_ohm_per_v").multiply(row.number("pack_nominal_v"));
        return TestedRow.isolation(limitOhm.movePointLeft(3).toPlainString(), limitOhm.toPlainString());
    }

    private static TestedRow measured(CheckRow row) {
        String kohm = row.number("inserted_resistor_ohm").movePointLeft(3).toPlainString();
        return limited(row)
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

    /**
     * A clip off the chassis: the meter shows next to nothing, and the formula gives 117 Mohm. For that, V1 would be
     * Vb · (Ri ∥ Rm) / (Ri + Ri ∥ Rm) = 390 V × 9.21 / (117 + 9.21) = 28.5 V at least.
     */
    @Test
    void voltages_that_cannot_be_are_measured_again_and_pass_nothing() {
        TestedRow off = isolation("390", "0.3", "0.3", "0.2", "180");

        assertThat(off.flaws()).containsExactly(Flaw.Kind.CHASSIS_VOLTS_TOO_SMALL);
        assertThat(off.judgement())
                .isInstanceOfSatisfying(
                        Judgement.Unreadable.class,
                        unreadable -> assertThat(new VerdictWords(TestWords.in("en"))
                                        .flaw(unreadable.flaws().get(0)))
                                .isEqualTo(
                                        "not plausible, repeat: V1 is 0.3 V; for the Ri worked out and Rm it would be"
                                                + " 28.5 V at least. Look at the clips on pole and chassis"));
    }

    /**
     * By hand, meter of 10 Mohm, Ro 200 kohm, poles that insulate with Ra and Rb: V1 = Vb Gb / (Ga + Gb + Gm), V2 the other,
     * V1' with Ro beside. 480 kohm and 800 kohm at 400 V: 242.7, 145.6, 98.8 V. 100 Mohm each at 390 V: 32.5, 32.5, 0.8 V.
     * 1 Gohm each: 3.8, 3.8, 0.1 V. One pole at 480 kohm and none measurable at the other: 381.7, 0, 116.0 V.
     */
    @ParameterizedTest
    @CsvSource({"400, 242.7, 145.6, 98.8", "390, 32.5, 32.5, 0.8", "390, 3.8, 3.8, 0.1", "400, 381.7, 0, 116.0"})
    void what_a_real_circuit_shows_is_plausible(String vb, String v1, String v2, String withResistor) {
        assertThat(isolation(vb, v1, v2, withResistor, "200").judgement().passed())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "390, 0.3, 0.3, 0.1, CHASSIS_VOLTS_TOO_SMALL",
        "390, 1.0, 0.8, 0.1, CHASSIS_VOLTS_TOO_SMALL",
        "400, 242.7, 0, 98.8, POLES_DO_NOT_ADD_UP",
        "400, 242.7, 250, 98.8, OTHER_POLE_GREATER",
        "390, 195, 195, 1.0, POLES_DO_NOT_ADD_UP"
    })
    void what_no_circuit_shows_is_not(String vb, String v1, String v2, String withResistor, Flaw.Kind kind) {
        assertThat(isolation(vb, v1, v2, withResistor, "200").flaws()).containsExactly(kind);
    }

    /** Contactors open, or one module; a clip at the wrong device; and just within what a meter may be off. */
    @ParameterizedTest
    @CsvSource({
        "39, 19.5, 19.5, 10, false",
        "800, 400, 400, 200, false",
        "282, 160, 110, 80, false",
        "283, 160, 111, 80, true",
        "411, 230, 170, 110, true",
        "412, 230, 171, 110, false"
    })
    void a_voltage_that_is_not_the_packs_is_not_plausible(
            String vb, String v1, String v2, String withResistor, boolean plausible) {
        assertThat(isolation(vb, v1, v2, withResistor, "200").flaws())
                .isEqualTo(plausible ? List.of() : List.of(Flaw.Kind.NOT_THE_PACK));
    }

    /** Limit 40 kohm, resistor within a fifth of 200 kohm, meter of 10 Mohm. */
    private static TestedRow isolation(String vb, String v1, String v2, String withResistor, String kohm) {
        return TestedRow.isolation("40", "200000")
                .measured(vb, v1, withResistor, kohm, "10")
                .read("test.v2", v2, "V", "2026-03-30");
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
