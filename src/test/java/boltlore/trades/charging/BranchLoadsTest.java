package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boltlore.bill.Bill;
import boltlore.catalogue.Branch;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.demo.Demo;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The load of a branch")
class BranchLoadsTest {

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private static BigDecimal n(String number) {
        return new BigDecimal(number);
    }

    private static BranchCheck named(Charging charging, String name) {
        return charging.branches().stream()
                .filter(check -> check.branch().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static BranchLoad load(String order, String name) {
        BranchLoad load = named(charging(order, name, null, null), name).load();
        assertThat(load).isNotNull();
        return load;
    }

    /** The order with what one branch feeds, and what is declared of it, changed where something is given. */
    private static Charging charging(String order, String name, @Nullable Feeds feeds, @Nullable BigDecimal declared) {
        Bill bill = Demo.bill(order);
        Electrics all = bill.resolved().choices().family().electrics();
        List<Branch> branches = all.branches().stream()
                .map(each -> each.name().equals(name) && (feeds != null || declared != null)
                        ? changed(each, feeds, declared)
                        : each)
                .toList();
        return ChargingCalculation.calculate(new ChangedElectrics(all).branches(branches), bill, null, null);
    }

    private static Branch changed(Branch branch, @Nullable Feeds feeds, @Nullable BigDecimal declared) {
        return new Branch(
                branch.name(),
                branch.says(),
                branch.when(),
                branch.position(),
                branch.fedBy(),
                declared,
                feeds,
                branch.protection(),
                branch.cable(),
                branch.derating(),
                branch.because());
    }

    @Test
    @DisplayName(
            "of 71.7 Nm at 12,000 rpm = 90.10 kW, at 91 % from the empty pack of 288 V, is 90,101 / (0.91 × 288) = 343.79 A; of 44 Nm 210.97 A for hours")
    void of_a_drive_unit() {
        BranchLoad load = load("bl-1001", "drive-90-kw");

        assertThat(load.mostAmps()).isCloseTo(n("343.79"), within(HUNDREDTH));
        assertThat(load.hoursAmps()).isCloseTo(n("210.97"), within(HUNDREDTH));
        assertThat(load.derived()).isTrue();
    }

    @Test
    @DisplayName("of the battery is drive + converter + compressor + heater: 343.79 + 9.23 + 10.96 + 17.36 = 381.35 A")
    void of_the_battery() {
        assertThat(load("bl-1001", "battery-90-kw").mostAmps()).isCloseTo(n("381.35"), within(HUNDREDTH));
    }

    @Test
    @DisplayName("of the second string is six tenths of the battery's: 0.6 × 381.35 = 228.81 A")
    void of_a_share() {
        assertThat(load("bl-1001", "string").mostAmps()).isCloseTo(n("228.81"), within(HUNDREDTH));
    }

    @Test
    @DisplayName("of the charger's output is 7,400 × 0.93 / 288 = 23.90 A, and the 25 A that are declared count")
    void the_larger_counts() {
        BranchLoad load = load("bl-2001", "charger-seven");

        assertThat(load.mostAmps()).isEqualByComparingTo("25");
        assertThat(load.says()).startsWith("25 A declared, 23.9 A calculated");
    }

    @Test
    @DisplayName("of the converter's output is 2,500 W / 13.9 V = 179.86 A")
    void of_the_converter() {
        assertThat(load("bl-2001", "low-converter").mostAmps()).isCloseTo(n("179.86"), within(HUNDREDTH));
    }

    @Test
    @DisplayName("stops the order where a 90 kW unit draws 332 A over a cable of 310 A, whatever is declared")
    void declared_too_low_stops() {
        Feeds drive = new Feeds.Device(n("90000"), n("45000"), n("94"), null);
        Charging larger = charging("bl-2001", "drive-60-kw", drive, n("10"));

        assertThat(named(larger, "drive-60-kw").verdict()).isEqualTo("Stop");
        assertThat(larger.findings().all())
                .extracting(finding -> finding.kind())
                .contains(ChargingFinding.LOAD_ABOVE_CABLE, ChargingFinding.LOAD_ABOVE_FUSE);
    }

    @Test
    void that_is_only_declared_is_to_be_looked_at() {
        Charging declared = charging("bl-2001", "drive-60-kw", null, n("10"));

        assertThat(named(declared, "drive-60-kw").comparisons())
                .filteredOn(comparison -> !comparison.holds())
                .extracting(comparison -> comparison.finding().kind())
                .containsExactly(ChargingFinding.LOAD_NOT_DERIVED);
    }

    @Test
    void of_branches_that_feed_each_other_is_not_known() {
        Charging circle =
                charging("bl-2001", "drive-60-kw", new Feeds.Branches(List.of("battery-60-kw"), BigDecimal.ONE), null);

        assertThat(named(circle, "battery-60-kw").load()).isNull();
        assertThat(circle.findings().all())
                .extracting(finding -> finding.kind())
                .contains(ChargingFinding.BRANCH_NOT_JUDGED);
    }

    @Test
    void of_an_order_without_a_pack_is_found_and_not_taken_for_nothing() {
        Bill bill = Demo.bill("bl-2001");
        Electrics all = bill.resolved().choices().family().electrics();

        Charging charging = ChargingCalculation.calculate(new ChangedElectrics(all).packs(List.of()), bill, null, null);

        assertThat(named(charging, "drive-60-kw").load()).isNull();
        assertThat(named(charging, "drive-60-kw").verdict()).isEqualTo("Check");
        assertThat(named(charging, "low-converter").verdict()).isEqualTo("OK");
    }
}
