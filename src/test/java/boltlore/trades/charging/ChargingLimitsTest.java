package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.catalogue.Capacitor;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.InletWiring;
import boltlore.catalogue.PrechargeResistor;
import boltlore.catalogue.PublicLead;
import boltlore.demo.Demo;
import boltlore.findings.Finding;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Public lead, shared contacts, a shorted link and Y capacitors of the demo's orders")
class ChargingLimitsTest {

    private static Charging charging(String order) {
        Bill bill = Demo.bill(order);
        return with(bill, electrics(bill));
    }

    private static Electrics electrics(Bill bill) {
        return bill.resolved().choices().family().electrics();
    }

    private static List<AcCharging> posts(Charging charging) {
        return charging.ac().stream()
                .filter(way -> way.mains().says().equals("Public AC point"))
                .toList();
    }

    @Test
    @DisplayName(
            "what a public point gives passes the kit's own lead: 3 × 230 V × 16 A = 11.04 kW, on one phase 3.68 kW")
    void lead() {
        Bill bill = Demo.bill("bl-1014");
        PublicLead three = new PublicLead(new PartNumber("CC-23"), 3, BigDecimal.valueOf(16));
        PublicLead one = new PublicLead(new PartNumber("CC-23"), 1, BigDecimal.valueOf(16));

        List<AcCharging> own = posts(with(bill, new ChangedElectrics(electrics(bill)).leads(List.of(three))));
        List<AcCharging> fewer = posts(with(bill, new ChangedElectrics(electrics(bill)).leads(List.of(one))));

        assertThat(own)
                .singleElement()
                .satisfies(way -> assertThat(way.kilowatts()).isEqualByComparingTo("11.04"));
        assertThat(fewer).singleElement().satisfies(way -> {
            assertThat(way.kilowatts()).isEqualByComparingTo("3.68");
            assertThat(way.chain().whatLimits()).startsWith("The cable has 1 phase, so the other phases of the");
        });
    }

    @ParameterizedTest
    @DisplayName("the lead in the kit follows the charger, whatever the supply at home has")
    @CsvSource({"bl-1014, CC-23", "bl-2001, CC-22", "bl-1001, CC-23", "bl-1010, CC-21"})
    void leadFollowsCharger(String order, String part) {
        assertThat(charging(order).fitted().lead())
                .isNotNull()
                .satisfies(lead -> assertThat(lead.part()).isEqualTo(new PartNumber(part)));
    }

    /** What flows is the least of the plug's code, inlet and charger, 16 A of bl-1014's charger in each phase. */
    @ParameterizedTest
    @DisplayName("wires of a lead bear the current that flows, or it stops the order; a slow lead does not")
    @CsvSource({"3, 16, 16, false", "1, 16, 16, false", "3, 32, 20, false", "3, 32, 15.9, true", "3, 13, 13, false"})
    void wires(int phases, String amps, String wireAmps, boolean stops) {
        Bill bill = Demo.bill("bl-1014");
        PublicLead lead =
                new PublicLead(new PartNumber("CC-23"), phases, new BigDecimal(amps), new BigDecimal(wireAmps));

        Charging charging = with(bill, new ChangedElectrics(electrics(bill)).leads(List.of(lead)));

        assertThat(charging.findings().all())
                .filteredOn(found -> found.kind() == ChargingFinding.LEAD_ABOVE_ITS_WIRES)
                .extracting(Finding::says)
                .isEqualTo(
                        stops
                                ? List.of(
                                        "Public lead CC-23: its plug tells a charging point 32 A, so that 16 A flow, and its"
                                                + " wires bear 15.9 A: it overheats. Take a lead that is coded for what its"
                                                + " wires bear.")
                                : List.of());
    }

    private static Charging with(Bill bill, Electrics electrics) {
        return ChargingCalculation.calculate(electrics, bill, null, null);
    }

    private static boolean found(Charging charging, ChargingFinding kind) {
        return charging.findings().all().stream().anyMatch(finding -> finding.kind() == kind);
    }

    @Nested
    @DisplayName(
            "Where direct and alternating current share the inlet's contacts (J3400: electronicdesign.com, article 55019531)")
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
                    "all", "All", Condition.ALWAYS, BigDecimal.TEN, sum == null ? null : new BigDecimal(sum), null);
            return with(bill, new ChangedElectrics(electrics(bill)).capacitors(List.of(one)));
        }

        @Test
        @DisplayName(
                "hold C U² / 2: 2,460 nF at 403.2 V are 0.19996 J, 2,461 nF are 0.20004 J, and 0.2 J are the limit")
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
}
