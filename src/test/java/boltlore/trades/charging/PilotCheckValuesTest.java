package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Pilot and proximity agree with IEC 61851-1 and SAE J1772, as quoted in manuals")
class PilotCheckValuesTest {

    private static final BigDecimal A_LITTLE = new BigDecimal("0.1");

    private static Stream<CheckRow> rows(String... ids) {
        return CheckTable.rows("charging-pilot.csv", ids);
    }

    static Stream<CheckRow> codes() {
        return rows("PP-01", "PP-02", "PP-03", "PP-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void a_resistance_inside_its_band_codes_the_cable(CheckRow row) {
        int amps = row.number("expected_current_a").intValueExact();

        assertThat(Proximity.ofCable(row.number("proximity_ohm")).amps(3)).isEqualTo(amps);
        assertThat(Proximity.ofCable(row.number("proximity_ohm_from").add(A_LITTLE))
                        .amps(3))
                .isEqualTo(amps);
        assertThat(Proximity.ofCable(row.number("proximity_ohm_to").subtract(A_LITTLE))
                        .amps(3))
                .isEqualTo(amps);
        assertThat(CableCode.rated(amps).orElseThrow().ohm())
                .isEqualTo(row.number("proximity_ohm").intValueExact());
    }

    static Stream<CheckRow> shared() {
        return rows("PP-01", "PP-02", "PP-03");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shared")
    void where_two_bands_meet_the_lower_current_counts(CheckRow row) {
        assertThat(Proximity.ofCable(row.number("proximity_ohm_from")).amps(3))
                .isEqualTo(row.number("expected_current_a").intValueExact());
    }

    static Stream<CheckRow> largest() {
        return rows("PP-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("largest")
    void the_largest_code_carries_more_on_one_phase(CheckRow row) {
        assertThat(row.text("expected_meaning")).contains("63 A three-phase, 70 A single-phase");
        assertThat(Proximity.ofCable(row.number("proximity_ohm")).amps(1)).isEqualTo(70);
    }

    static Stream<CheckRow> outside() {
        return rows("PP-05", "PP-06");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("outside")
    void a_resistance_outside_all_bands_lets_nothing_flow(CheckRow row) {
        boolean below = row.has("proximity_ohm_to");
        BigDecimal ohm = below
                ? row.number("proximity_ohm_to").subtract(A_LITTLE)
                : row.number("proximity_ohm_from").add(A_LITTLE);

        assertThat(Proximity.ofCable(ohm)).isInstanceOf(below ? Proximity.Fault.class : Proximity.NoCable.class);
        assertThat(Proximity.ofCable(ohm).amps(1)).isZero();
    }

    static Stream<CheckRow> handle() {
        return rows("PP-07", "PP-08");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("handle")
    void a_type_1_handle_tells_latch_and_button(CheckRow row) {
        BigDecimal ohm = row.number("proximity_ohm");

        assertThat(Handle.of(ohm))
                .hasValueSatisfying(handle -> assertThat(
                                handle.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                        .isEqualTo(row.text("expected_meaning")));
        assertThat(Handle.of(ohm.multiply(new BigDecimal("1.2")))).isEmpty();
    }

    static Stream<CheckRow> states() {
        return rows("CS-A", "CS-B", "CS-C", "CS-D", "CS-E", "CS-F");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("states")
    void a_peak_of_the_pilot_is_a_state(CheckRow row) {
        PilotState state = PilotState.of(row.number("pilot_volt")).orElseThrow();

        assertThat(state.name()).isEqualTo(row.text("pilot_state"));
        assertThat(row.text("expected_meaning")).startsWith(state.says());
        assertThat(PilotState.of(row.number("pilot_volt").add(new BigDecimal("1.5"))))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("states")
    void a_state_has_the_resistance_of_the_table(CheckRow row) {
        String meaning =
                row.text("expected_meaning").replace("2.74 kohm", "2740 ohm").replace("1.3 kohm", "1300 ohm");
        Integer ohm = PilotState.valueOf(row.text("pilot_state")).ohm();

        assertThat(ohm != null).isEqualTo(meaning.contains("ohm"));
        assertThat(meaning).contains(ohm == null ? "" : ohm + " ohm");
    }

    static Stream<CheckRow> currents() {
        return rows("DC-01", "DC-02", "DC-03", "DC-04");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("currents")
    void a_duty_cycle_allows_a_current(CheckRow row) {
        assertThat(amps(row.number("duty_pct")))
                .isCloseTo(row.number("expected_current_a"), within(row.number("tolerance_abs")));
    }

    static Stream<CheckRow> duties() {
        return rows("DC-05", "DC-06", "DC-07");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("duties")
    void a_current_is_offered_by_a_duty_cycle(CheckRow row) {
        BigDecimal amps = row.number("expected_current_a");
        BigDecimal duty = PilotDuty.offering(amps).orElseThrow();

        assertThat(duty).isCloseTo(row.number("expected_duty_pct"), within(row.number("tolerance_abs")));
        assertThat(amps(duty)).isCloseTo(amps, within(new BigDecimal("0.000001")));
    }

    static Stream<CheckRow> least() {
        return rows("DC-08");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("least")
    void the_lowest_duty_cycles_allow_the_least_current(CheckRow row) {
        for (String end : new String[] {"duty_pct_from", "duty_pct_to"}) {
            assertThat(amps(row.number(end))).isEqualByComparingTo(row.number("expected_current_a"));
        }
    }

    static Stream<CheckRow> silent() {
        return rows("DC-09", "DC-10");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("silent")
    void some_duty_cycles_allow_nothing_by_themselves(CheckRow row) {
        PilotDuty duty = PilotDuty.of(row.numberOr("duty_pct", row.numberOr("duty_pct_to", BigDecimal.ZERO)));

        assertThat(duty)
                .isInstanceOf(
                        row.text("expected_meaning").contains("digital")
                                ? PilotDuty.DigitalOnly.class
                                : PilotDuty.NoCharging.class);
    }

    @Test
    @DisplayName("where the two lines overlap, the offer rounds down to what can be said: 85 % for 52 A")
    void overlap() {
        assertThat(PilotDuty.offering(new BigDecimal("52"))).contains(new BigDecimal("85"));
        assertThat(amps(new BigDecimal("85"))).isEqualByComparingTo("51");
        assertThat(amps(new BigDecimal("85.1"))).isEqualByComparingTo("52.75");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5.9", "80.1"})
    void a_current_that_no_duty_cycle_says_is_not_offered(BigDecimal amps) {
        assertThat(PilotDuty.offering(amps)).isEmpty();
    }

    private static BigDecimal amps(BigDecimal duty) {
        assertThat(PilotDuty.of(duty)).isInstanceOf(PilotDuty.Allows.class);
        return PilotDuty.of(duty) instanceof PilotDuty.Allows allows ? allows.amps() : BigDecimal.ZERO;
    }
}
