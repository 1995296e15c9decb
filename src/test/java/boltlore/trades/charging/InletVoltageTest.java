package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.bill.Bill;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Pack;
import boltlore.checkvalues.CheckRow;
import boltlore.checkvalues.CheckTable;
import boltlore.demo.Demo;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Inlet, cable and pack suit each other, by rules of common practice")
class InletVoltageTest {

    private static String verdict(String about, String lowest, String highest) {
        Bill bill = Demo.bill("bl-1002");
        Electrics electrics = bill.resolved().choices().family().electrics();
        return ChargingCalculation.calculate(with(electrics, lowest, highest), bill, null, null).others().stream()
                .filter(judgement -> judgement.about().equals(about))
                .map(Comparison::verdict)
                .findFirst()
                .orElseThrow();
    }

    private static Electrics with(Electrics all, String lowest, String highest) {
        Pack pack = all.packs().get(0);
        Pack changed = new Pack(
                pack.name(),
                pack.says(),
                pack.when(),
                pack.module(),
                pack.moduleVolts(),
                pack.moduleAmpHours(),
                pack.inSeries(),
                pack.inParallel(),
                new BigDecimal(highest),
                new BigDecimal(lowest),
                pack.resistanceMilliohm(),
                pack.usableKwh(),
                pack.continuousAmps(),
                pack.peakAmps(),
                pack.chargeAmps());
        return new ChangedElectrics(all).packs(List.of(changed));
    }

    static Stream<CheckRow> packAndInlet() {
        return CheckTable.rows("inlet-facts.csv", "IN-E7");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packAndInlet")
    void a_pack_above_its_inlet_is_too_much_and_one_below_the_posts_is_looked_at(CheckRow row) {
        assertThat(row.text("when")).contains("above the inlet voltage (error)").contains("150 or 200 V (warning");
        assertThat(verdict("Inlet", "288", "1000")).isEqualTo("OK");
        assertThat(verdict("Inlet", "288", "1000.1")).isEqualTo("Stop");
        assertThat(verdict("DC chargers", "200", "403.2")).isEqualTo("OK");
        assertThat(verdict("DC chargers", "199.9", "403.2")).isEqualTo("Check");
    }

    @Test
    @DisplayName("a charger of 7.4 kW gives 7400 W × 0.93 / 288 V = 23.9 A to the empty pack")
    void charge_current() {
        assertThat(ChargingCalculation.calculate(
                                Demo.bill("bl-1002")
                                        .resolved()
                                        .choices()
                                        .family()
                                        .electrics(),
                                Demo.bill("bl-1002"),
                                null,
                                null)
                        .others())
                .anySatisfy(judgement -> assertThat(judgement.says())
                        .isEqualTo("The charger gives up to 23.9 A to the empty pack, which takes 117 A."));
    }

    static Stream<CheckRow> looseCable() {
        return CheckTable.rows("inlet-facts.csv", "IN-E11");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("looseCable")
    void a_loose_cable_below_the_charger_limits_charging_and_says_so(CheckRow row) {
        assertThat(row.text("expected_message_in_plain_words"))
                .isEqualTo("charging is limited to what the cable code allows");
        Bill bill = Demo.bill("bl-1002");
        Charging charging = ChargingCalculation.calculate(
                bill.resolved().choices().family().electrics(), bill, null, CableCode.A20);

        assertThat(charging.ac().get(0).chain().whatLimits()).isEqualTo("The cable limits the current to 20 A.");
        assertThat(charging.findings().stops()).isFalse();
    }

    /**
     * The connector of Type 1 and CCS1 holds itself: its lever engages in the inlet and opens the proximity contact when it
     * is pressed (SAE J1772 and IEC 62196-2, after the lexicon of emobile-bals.com, 'Type 1'). The actuator that bolts the
     * connector in the inlet belongs to CCS2 (IEC 62196-3, configurations EE and FF, from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "bl-1004, CI-T1, handle, no",
        "bl-2003, CI-T1, handle, no",
        "bl-1001, CI-T2, cable-code, CI-LK2",
        "bl-2001, CI-T2, cable-code, CI-LK2"
    })
    void ccs1_is_held_by_the_lever_of_its_connector_and_ccs2_by_the_inlet(
            String order, String inlet, String proximity, String lock) {
        Bill bill = Demo.bill(order);
        List<String> parts =
                bill.items().stream().map(item -> item.part().number().text()).toList();

        assertThat(parts).contains(inlet);
        assertThat(parts.stream().filter(part -> part.startsWith("CI-LK")).toList())
                .isEqualTo(lock.equals("no") ? List.of() : List.of(lock));
        Electrics electrics = bill.resolved().choices().family().electrics();
        assertThat(Fitted.of(electrics, bill).inlet())
                .extracting(wired -> wired.proximity().written())
                .isEqualTo(proximity);
    }
}
