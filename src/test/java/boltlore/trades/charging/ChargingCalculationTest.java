package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boltlore.bill.Bill;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.ProximityKind;
import boltlore.catalogue.PublicLead;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.demo.Demo;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    private static List<AcCharging> posts(Charging charging) {
        return charging.ac().stream()
                .filter(way -> way.mains().says().equals("Public AC point"))
                .toList();
    }

    @Test
    @DisplayName("what a public point gives passes the kit's own lead: 3 × 230 V × 16 A = 11.04 kW, on one phase 3.68 kW")
    void lead() {
        Bill bill = Demo.bill("bl-1014");
        PublicLead three = new PublicLead(new PartNumber("CC-23"), 3, BigDecimal.valueOf(16));
        PublicLead one = new PublicLead(new PartNumber("CC-23"), 1, BigDecimal.valueOf(16));

        List<AcCharging> own = posts(with(bill, new ChangedElectrics(electrics(bill)).leads(List.of(three))));
        List<AcCharging> fewer = posts(with(bill, new ChangedElectrics(electrics(bill)).leads(List.of(one))));

        assertThat(own).singleElement().satisfies(way -> assertThat(way.kilowatts())
                .isEqualByComparingTo("11.04"));
        assertThat(fewer).singleElement().satisfies(way -> {
            assertThat(way.kilowatts()).isEqualByComparingTo("3.68");
            assertThat(way.chain().whatLimits()).startsWith("The cable has 1 phase, so the other phases of the");
        });
    }

    @ParameterizedTest
    @DisplayName("the lead in the kit follows the charger, whatever the supply at home has")
    @CsvSource({"bl-1014, CC-23", "bl-2001, CC-22", "bl-1001, CC-23", "bl-1010, CC-21"})
    void leadFollowsCharger(String order, String part) {
        assertThat(charging(order).fitted().lead()).isNotNull().satisfies(lead -> assertThat(lead.part())
                .isEqualTo(new PartNumber(part)));
    }

    private static Charging with(Bill bill, Electrics electrics) {
        return ChargingCalculation.calculate(electrics, bill, null, null);
    }

    private static boolean found(Charging charging, ChargingFinding kind) {
        return charging.findings().all().stream().anyMatch(finding -> finding.kind() == kind);
    }

    @Nested
    @DisplayName("Where direct and alternating current share the inlet's contacts (J3400: SAE J3400, from memory)")
    class Shared_pins {

        private final Bill bill = Demo.bill("bl-1008");

        private Charging isolatedBy(@Nullable String position) {
            List<InletWiring> inlets = electrics(bill).inlets().stream()
                    .map(each -> each.sharedPins()
                            ? new InletWiring(
                                    each.when(),
                                    each.proximity(),
                                    each.direct(),
                                    true,
                                    position == null ? null : new PositionName(position))
                            : each)
                    .toList();
            return with(bill, new ChangedElectrics(electrics(bill)).inlets(inlets));
        }

        @Test
        void the_kit_has_contactors_that_isolate_the_charger() {
            assertThat(bill.quantities()).containsKey(new PartNumber("CI-ACK"));
            assertThat(found(isolatedBy("charger-isolation"), ChargingFinding.SHARED_PINS))
                    .isFalse();
        }

        @Test
        void a_kit_without_them_stops() {
            assertThat(found(isolatedBy("three-phase-contactor-nowhere"), ChargingFinding.SHARED_PINS))
                    .isTrue();
            assertThat(found(isolatedBy(null), ChargingFinding.SHARED_PINS)).isTrue();
        }

        @Test
        void another_inlet_needs_none() {
            assertThat(charging("bl-1001").comparisons())
                    .noneMatch(each -> each.finding().kind() == ChargingFinding.SHARED_PINS);
        }
    }

    @Nested
    @DisplayName("A shorted link")
    class Shorted_link {

        private static Charging resistor(String pulseJoule, String abortAfter) {
            Bill bill = Demo.bill("bl-1001");
            List<PrechargeResistor> resistors = electrics(bill).resistors().stream()
                    .map(each -> new PrechargeResistor(
                            each.part(),
                            each.when(),
                            each.ohm(),
                            new BigDecimal(pulseJoule),
                            new BigDecimal(abortAfter)))
                    .toList();
            return with(bill, new ChangedElectrics(electrics(bill)).resistors(resistors));
        }

        @Test
        @DisplayName("leaves V² t / R = 403.2² × 0.25 / 47 = 865 J in the resistor until the controller aborts")
        void energy() {
            assertThat(found(resistor("865", "0.25"), ChargingFinding.PRECHARGE_SHORTED))
                    .isFalse();
            assertThat(resistor("150", "0.25").findings().all())
                    .filteredOn(finding -> finding.kind() == ChargingFinding.PRECHARGE_SHORTED)
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.says())
                            .contains("865 J in a resistor rated 150 J")
                            .contains("must abort within 0.043 s"));
        }

        @Test
        @DisplayName("is not told from a sound one where the controller gives up before 0.176 s (−R C ln 0.05)")
        void aborts_too_soon() {
            assertThat(found(resistor("1200", "0.177"), ChargingFinding.PRECHARGE_ABORTED))
                    .isFalse();
            assertThat(found(resistor("1200", "0.175"), ChargingFinding.PRECHARGE_ABORTED))
                    .isTrue();
        }
    }

    @Nested
    @DisplayName("Y capacitors")
    class Y_capacitors {

        /** All on one device, so that the sum is known. */
        private static Charging nanofarad(@Nullable String sum) {
            Bill bill = Demo.bill("bl-1001");
            Capacitor one = new Capacitor(
                    "all", "All", Condition.ALWAYS, BigDecimal.TEN, sum == null ? null : new BigDecimal(sum));
            return with(bill, new ChangedElectrics(electrics(bill)).capacitors(List.of(one)));
        }

        @Test
        @DisplayName("hold C U² / 2: 2,460 nF at 403.2 V are 0.19996 J, 2,461 nF are 0.20004 J, and 0.2 J are the limit")
        void energy() {
            assertThat(found(nanofarad("2460"), ChargingFinding.Y_ENERGY)).isFalse();
            assertThat(found(nanofarad("2461"), ChargingFinding.Y_ENERGY)).isTrue();
        }

        @Test
        void that_nobody_gives_are_noted() {
            assertThat(found(nanofarad(null), ChargingFinding.Y_NOT_GIVEN)).isTrue();
            assertThat(found(nanofarad("1"), ChargingFinding.Y_NOT_GIVEN)).isFalse();
        }
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
