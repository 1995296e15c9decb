package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boltlore.bill.Bill;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Pack;
import boltlore.catalogue.ProximityKind;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.demo.Demo;
import boltlore.findings.Finding;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Charging of the demo's orders")
class ChargingCalculationTest {

    private static Charging charging(String order) {
        Bill bill = Demo.bill(order);
        return ChargingCalculation.calculate(electrics(bill), bill, null, null);
    }

    private static Electrics electrics(Bill bill) {
        return bill.resolved().choices().family().electrics();
    }

    @ParameterizedTest
    @ValueSource(strings = {"bl-1001", "bl-1002", "bl-1003", "bl-1004", "bl-1005", "bl-1010", "bl-2001", "bl-2002"})
    @DisplayName("know all they need, agree with their kits, and keep their limits")
    void sound(String order) {
        Charging charging = charging(order);

        assertThat(charging.missing()).isEmpty();
        assertThat(charging.comparisons())
                .isNotEmpty()
                .noneMatch(judgement -> judgement.verdict().equals("Stop"));
        assertThat(charging.branches()).hasSizeGreaterThan(5);
    }

    @Test
    @DisplayName("two strings of eight modules of 44 V, 80 Ah: 352 V, 56.3 kWh, 201.6 kΩ at 403.2 V and 500 Ω/V")
    void pack() {
        Charging charging = charging("bl-1001");

        Pack pack = charging.fitted().pack();
        assertThat(pack).isNotNull();
        assertThat(pack.nominalVolts()).isEqualByComparingTo("352");
        assertThat(pack.nominalKwh()).isEqualByComparingTo("56.320");
        assertThat(charging.isolationOhm()).isEqualByComparingTo("201600");
    }

    @Test
    @DisplayName("50 kWh × 0.6 / (11.04 kW × 0.94) = 2.89 h at home, 30 kWh / 70.4 kW on direct current")
    void hours() {
        Charging charging = charging("bl-1001");

        AcCharging home = charging.ac().get(1);
        assertThat(home.kilowatts()).isEqualByComparingTo("11.04");
        assertThat(home.hours()).isCloseTo(new BigDecimal("2.891"), within(new BigDecimal("0.001")));
        DcCharging dc = charging.dc();
        assertThat(dc).isNotNull();
        assertThat(dc.kilowatts()).isEqualByComparingTo("70.4");
        assertThat(dc.hours()).isCloseTo(new BigDecimal("0.426"), within(new BigDecimal("0.001")));
    }

    @Test
    void each_larger_cable_at_home_brings_more_and_the_first_that_brings_no_more_is_left_out() {
        List<AcCharging> home = charging("bl-1002").ac().stream()
                .filter(way -> way.mains().says().equals("At home"))
                .toList();

        assertThat(home).extracting(AcCharging::cable).containsExactly(CableCode.A13, CableCode.A20, CableCode.A32);
        assertThat(home).extracting(AcCharging::kilowatts).isSorted();
    }

    @Test
    void an_inlet_without_a_cable_code_has_the_cable_of_the_post() {
        assertThat(charging("bl-1004").ac()).isNotEmpty().allMatch(way -> way.cable() == null);
    }

    @Test
    void a_larger_resistance_of_the_precharge_takes_longer_and_leaves_the_same_energy() {
        Precharge precharge = charging("bl-1001").precharge();
        assertThat(precharge).isNotNull();
        Precharge slower = new Precharge(BigDecimal.valueOf(100), precharge.microfarad());

        assertThat(slower.secondsToGate()).isGreaterThan(precharge.secondsToGate());
        assertThat(slower.joules(BigDecimal.TEN)).isEqualByComparingTo(precharge.joules(BigDecimal.TEN));
    }

    @Test
    @DisplayName("an outlet of 15 A at 120 V gives 1800 W, and 80 % of it for hours (CP-14, CP-15)")
    void export() {
        Export export = charging("bl-1004").export();

        assertThat(export).isNotNull();
        assertThat(export.shortWatts()).isEqualByComparingTo("1800");
        assertThat(export.continuousWatts()).isEqualByComparingTo("1440");
    }

    @Test
    void an_order_without_charging_facts_says_what_is_missing_and_stops_nothing() {
        Charging charging = ChargingCalculation.calculate(Electrics.NONE, Demo.bill("bl-1001"), null, null);

        assertThat(charging.ac()).isEmpty();
        assertThat(charging.comparisons()).isEmpty();
        assertThat(charging.findings().stops()).isFalse();
        assertThat(charging.missing())
                .extracting(Finding::says)
                .anyMatch(says -> says.contains("no battery pack"))
                .anyMatch(says -> says.contains("no on-board charger"))
                .anyMatch(says -> says.contains("no isolation"));
    }

    @Test
    void a_pack_that_is_there_twice_is_not_guessed() {
        Bill bill = Demo.bill("bl-1001");
        Electrics all = electrics(bill);
        Electrics twice = new ChangedElectrics(all)
                .packs(Stream.concat(all.packs().stream(), all.packs().stream()).toList());

        assertThat(ChargingCalculation.calculate(twice, bill, null, null).missing())
                .singleElement()
                .extracting(Finding::says)
                .asString()
                .contains("more than one battery pack");
    }

    @Test
    void no_power_and_no_efficiency_are_refused() {
        Pack pack = charging("bl-1001").fitted().pack();
        assertThat(pack).isNotNull();

        assertThatThrownBy(() -> ChargingTime.hours(pack, BigDecimal.ZERO, BigDecimal.TEN))
                .hasMessageContaining("kilowatts must be above 0");
        assertThatThrownBy(() -> ChargingTime.hours(pack, BigDecimal.TEN, BigDecimal.ZERO))
                .hasMessageContaining("efficiencyPercent must be above 0");
    }

    static Stream<CheckRow> otherCode() {
        return CheckTable.rows("charging-pilot.csv", "PP-09");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("otherCode")
    void an_inlet_whose_contact_codes_the_cable_by_another_table_needs_a_setting(CheckRow row) {
        assertThat(row.text("expected_meaning")).contains("does not code the current");
        assertThat(LoomPart.of(ProximityKind.OTHER_CODE))
                .filteredOn(part -> part.contact().equals("Proximity"))
                .singleElement()
                .satisfies(part -> assertThat(part.where()).contains("a setting for this family of inlets"));
    }

    static Stream<CheckRow> handles() {
        return CheckTable.rows("charging-pilot.csv", "PP-07", "PP-08");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("handles")
    void the_loom_of_a_handle_and_that_of_a_cable_code_have_other_values(CheckRow row) {
        String ohm = row.text("proximity_ohm") + " Ω";

        assertThat(LoomPart.of(ProximityKind.HANDLE))
                .anyMatch(part -> part.value().endsWith(ohm));
        assertThat(LoomPart.of(ProximityKind.CABLE_CODE))
                .noneMatch(part -> part.value().endsWith(ohm));
    }
}
