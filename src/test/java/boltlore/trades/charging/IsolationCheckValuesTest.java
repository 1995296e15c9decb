package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boltlore.catalogue.Buses;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.trades.charging.IsolationReading.Flaw;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Isolation, bonding and precharge agree with UN Regulation 100 and the textbook")
class IsolationCheckValuesTest {

    private static final Map<String, Buses> BUSES = Map.of(
            "none", Buses.SEPARATE_DC,
            "separate", Buses.SEPARATE_AC,
            "joined, plain", Buses.JOINED,
            "joined, AC side double insulated or robustly protected", Buses.JOINED_AC_PROTECTED);

    private static final BigDecimal METER = BigDecimal.valueOf(10_000_000);

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("isolation-and-bonding.csv", ids);
    }

    static Stream<CheckRow> bonding() {
        return rows("IB-01");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bonding")
    void a_bond_passes_below_the_limit_and_with_enough_current(CheckRow row) {
        BigDecimal amps = row.number("test_current_a");
        BigDecimal limit = row.number("expected_limit_ohm");

        assertThat(Bonding.passes(new BigDecimal("0.09"), amps)).isTrue();
        assertThat(Bonding.passes(limit, amps)).isFalse();
        assertThat(Bonding.passes(new BigDecimal("0.09"), new BigDecimal("0.19")))
                .isFalse();
        assertThat(Bonding.ohm(new BigDecimal("0.018"), amps)).isEqualByComparingTo("0.09");
    }

    static Stream<CheckRow> drop() {
        return rows("IB-02");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("drop")
    void the_limit_is_a_voltage_drop_too(CheckRow row) {
        assertThat(Bonding.dropAtLimitVolts(row.number("test_current_a")))
                .isCloseTo(row.number("expected_volt"), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> classes() {
        return rows("IB-03", "IB-04", "IB-05", "IB-06");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("classes")
    void the_arrangement_of_the_buses_gives_the_ohm_per_volt(CheckRow row) {
        Buses buses = BUSES.getOrDefault(row.text("ac_part"), Buses.SEPARATE_DC);

        assertThat(BUSES).containsKey(row.text("ac_part"));
        assertThat(Isolation.ohmPerVolt(buses)).isEqualByComparingTo(row.number("expected_ohm_per_v"));
    }

    static Stream<CheckRow> limits() {
        return rows("IB-07", "IB-08");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limits")
    void the_limit_is_ohm_per_volt_times_volts(CheckRow row) {
        Buses buses = row.text("limit_ohm_per_v").equals("100") ? Buses.SEPARATE_DC : Buses.JOINED;

        assertThat(Isolation.limitOhm(buses, row.number("pack_nominal_v")))
                .isCloseTo(row.number("expected_limit_ohm"), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> measured() {
        return rows("IB-09");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("measured")
    void isolation_follows_from_two_voltages_and_a_resistor(CheckRow row) {
        IsolationReading reading = reading(row);
        BigDecimal limit = row.number("limit_ohm_per_v");

        assertThat(reading.isolationOhm())
                .isCloseTo(row.number("expected_isolation_ohm"), within(row.number("tolerance_abs")));
        assertThat(reading.ohmPerVolt())
                .isCloseTo(row.number("expected_ohm_per_v"), within(row.number("tolerance_abs")));
        assertThat(reading.passes(limit))
                .isEqualTo(row.text("expected_decision").equals("pass"));
        assertThat(reading.flaws(METER, limit.multiply(row.number("pack_nominal_v"))))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("measured")
    void a_reading_says_what_is_wrong_with_it(CheckRow row) {
        BigDecimal suited = new BigDecimal("200000");

        assertThat(reading(row).flaws(METER.subtract(BigDecimal.ONE), suited))
                .containsExactly(Flaw.METER_LOADS_THE_BUS);
        assertThat(reading(row).flaws(METER, new BigDecimal("166000"))).containsExactly(Flaw.RESISTOR_UNSUITED);
        assertThat(reading(row).flaws(METER, new BigDecimal("167000"))).isEmpty();
        assertThat(reading("400", "250", "250").flaws(METER, suited)).containsExactly(Flaw.VOLTAGE_DID_NOT_FALL);
        assertThat(reading("240", "250", "100").flaws(METER, suited)).containsExactly(Flaw.MORE_THAN_THE_PACK);
    }

    static Stream<CheckRow> time() {
        return rows("IB-12");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("time")
    void precharging_takes_three_time_constants_to_the_gate(CheckRow row) {
        Precharge precharge = new Precharge(row.number("resistor_ohm"), microfarad(row));
        BigDecimal fraction = row.number("precharge_fraction");

        assertThat(precharge.secondsTo(fraction))
                .isCloseTo(row.number("expected_time_s"), within(row.number("tolerance_abs")));
        assertThat(precharge.fractionAfter(precharge.secondsTo(fraction)))
                .isCloseTo(fraction, within(new BigDecimal("0.00001")));
    }

    static Stream<CheckRow> energy() {
        return rows("IB-13");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("energy")
    void precharging_leaves_half_c_v_squared_in_the_resistor(CheckRow row) {
        assertThat(new Precharge(BigDecimal.TEN, microfarad(row)).joules(row.number("circuit_v")))
                .isCloseTo(row.number("expected_energy_j"), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> voltageClass() {
        return rows("IB-10");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("voltageClass")
    void high_voltage_begins_above_60_V_direct_and_30_V_alternating(CheckRow row) {
        assertThat(row.text("expected_decision"))
                .contains("above 30 V AC rms or above 60 V DC (to 1000 V AC, 1500 V DC)");
        assertThat(HighVoltage.direct(new BigDecimal("60"))).isFalse();
        assertThat(HighVoltage.direct(new BigDecimal("60.1"))).isTrue();
        assertThat(HighVoltage.direct(new BigDecimal("1500"))).isTrue();
        assertThat(HighVoltage.direct(new BigDecimal("1500.1"))).isFalse();
        assertThat(HighVoltage.alternating(new BigDecimal("30"))).isFalse();
        assertThat(HighVoltage.alternating(new BigDecimal("30.1"))).isTrue();
        assertThat(HighVoltage.alternating(new BigDecimal("1000.1"))).isFalse();
    }

    static Stream<CheckRow> gate() {
        return rows("IB-14");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("gate")
    void the_main_contactor_closes_only_at_the_gate(CheckRow row) {
        BigDecimal pack = BigDecimal.valueOf(400);
        BigDecimal atGate = pack.multiply(row.number("precharge_fraction"));

        assertThat(Precharge.GATE).isEqualByComparingTo(row.number("precharge_fraction"));
        assertThat(Precharge.mayClose(atGate, pack)).isTrue();
        assertThat(Precharge.mayClose(atGate.subtract(new BigDecimal("0.1")), pack))
                .isFalse();
    }

    @Test
    @DisplayName("the first current of a precharge is that of the resistor alone")
    void first_current() {
        assertThat(new Precharge(BigDecimal.valueOf(50), BigDecimal.ONE).firstAmps(BigDecimal.valueOf(400)))
                .isEqualByComparingTo("8");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "-0.1"})
    void a_share_that_is_never_reached_is_refused(BigDecimal share) {
        Precharge precharge = new Precharge(BigDecimal.TEN, BigDecimal.TEN);

        assertThatThrownBy(() -> precharge.secondsTo(share)).hasMessageContaining("from 0 to below 1");
    }

    @Test
    void a_voltage_that_is_not_above_nothing_is_refused() {
        assertThatThrownBy(() -> reading("400", "250", "0")).hasMessageContaining("withResistorVolts must be above 0");
        assertThatThrownBy(() -> Isolation.limitOhm(Buses.JOINED, BigDecimal.ZERO))
                .hasMessageContaining("volts");
    }

    private static IsolationReading reading(CheckRow row) {
        return new IsolationReading(
                row.number("measured_pack_v"),
                row.number("v1_v"),
                row.number("v1_with_resistor_v"),
                row.number("inserted_resistor_ohm"));
    }

    private static IsolationReading reading(String pack, String before, String with) {
        return new IsolationReading(
                new BigDecimal(pack), new BigDecimal(before), new BigDecimal(with), new BigDecimal("200000"));
    }

    /** The table is in mF. */
    private static BigDecimal microfarad(CheckRow row) {
        return row.number("capacitance_mf").movePointRight(3);
    }
}
