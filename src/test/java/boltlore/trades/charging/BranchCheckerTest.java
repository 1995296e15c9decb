package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Branch.Protection;
import boltlore.catalogue.Condition;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.catalogue.LowVoltage;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("Load, fuse and cable of one branch")
class BranchCheckerTest {

    private static final PartNumber PART = new PartNumber("P");

    /** 400 V when full, 288 V when empty, 0.1 Ω: a short circuit of 4 kA; 280 A for hours, 350 A for a short time. */
    private static final Pack PACK = new Pack(
            "p",
            "p",
            Condition.ALWAYS,
            PART,
            n("44"),
            n("78"),
            8,
            1,
            n("400"),
            n("288"),
            n("100"),
            n("20"),
            n("280"),
            n("350"),
            n("100"));

    private static final PowerCable CABLE =
            new PowerCable(PART, n("50"), n("0.386"), 125, n("1000"), n("300"), "free air", n("143"));

    private static final FedBy FROM_PACK = new FedBy.Pack();

    private static BigDecimal n(String number) {
        return new BigDecimal(number);
    }

    private static Branch branch(FedBy fedBy, String load, Protection protection, String derating) {
        Feeds feeds = new Feeds.Device(n(load).multiply(n("100")), n(load).multiply(n("100")), n("100"), n("100"));
        return new Branch(
                "b",
                "Battery to box",
                Condition.ALWAYS,
                new PositionName("cable"),
                fedBy,
                null,
                feeds,
                protection,
                PART,
                n(derating),
                "");
    }

    private static Protection by(@Nullable String fuse, String limitedBy) {
        return new Protection(fuse == null ? null : new Protection.Fuse(fuse, 0), null, limitedBy);
    }

    private static Branch branch(String load, String derating) {
        return branch(FROM_PACK, load, by("f", ""), derating);
    }

    private static Fuse fuse(String amps, String volts, String kiloamps, String a2s, Guards guards) {
        return new Fuse("f", "Fuse", PART, n(amps), n(volts), n(kiloamps), n(a2s), guards);
    }

    private static Fuse fuse(String amps) {
        return fuse(amps, "500", "20", "90000", Guards.OVERLOAD);
    }

    private static Electrics with(@Nullable ElectricLimits limits, Fuse... fuses) {
        return new Electrics(
                null,
                new LowVoltage(n("14.4"), n("12"), n("7.2")),
                limits,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(fuses),
                List.of(CABLE),
                List.of(),
                List.of(),
                List.of());
    }

    private static BranchCheck check(Branch branch, Electrics electrics, @Nullable Pack pack, @Nullable Integer mm) {
        BranchLoad load = new BranchLoads(electrics, List.of(branch), pack, java.util.Map.of())
                .of(branch)
                .orElse(null);
        return BranchChecker.check(branch, electrics, CABLE, pack, load, mm);
    }

    private static String verdict(Branch branch, Fuse... fuses) {
        return check(branch, with(null, fuses), PACK, null).verdict();
    }

    private static Stream<Kind> found(BranchCheck check) {
        return check.comparisons().stream()
                .filter(comparison -> !comparison.holds())
                .map(Comparison::finding)
                .map(Finding::kind);
    }

    @Test
    void load_up_to_fuse_up_to_cable_is_fine_at_both_ends() {
        assertThat(verdict(branch("250", "1"), fuse("250"))).isEqualTo("OK");
        assertThat(verdict(branch("250", "1"), fuse("300"))).isEqualTo("OK");
    }

    @Test
    void a_load_above_its_fuse_is_too_much() {
        assertThat(verdict(branch("250.1", "1"), fuse("250"))).isEqualTo("Stop");
    }

    @Test
    void a_load_above_what_the_pack_bears_is_too_much_but_not_one_of_the_mains() {
        Fuse large = fuse("290");
        Branch mains = branch(new FedBy.Mains(n("400"), 1), "280.1", by("f", ""), "1");

        assertThat(verdict(branch("280", "1"), large)).isEqualTo("OK");
        assertThat(verdict(branch("280.1", "1"), large)).isEqualTo("Stop");
        assertThat(verdict(mains, large)).isEqualTo("OK");
    }

    @Test
    @DisplayName("what flows for a short time counts against the pack's peak, and against cable and fuse as if for hours")
    void peak() {
        Branch brief = peak("35000");

        assertThat(found(check(brief, with(null, fuse("400")), PACK, null)))
                .doesNotContain(ChargingFinding.PEAK_ABOVE_PACK, ChargingFinding.LOAD_ABOVE_PACK)
                .contains(ChargingFinding.LOAD_ABOVE_CABLE);
        assertThat(found(check(peak("35010"), with(null, fuse("400")), PACK, null)))
                .contains(ChargingFinding.PEAK_ABOVE_PACK)
                .doesNotContain(ChargingFinding.LOAD_ABOVE_PACK);
    }

    private static Branch peak(String watts) {
        Branch plain = branch("1", "1");
        return new Branch(
                plain.name(),
                plain.says(),
                plain.when(),
                plain.position(),
                plain.fedBy(),
                null,
                new Feeds.Device(n(watts), n("20000"), n("100"), n("100")),
                plain.protection(),
                PART,
                n("1"),
                "");
    }

    @Test
    void a_fuse_above_its_cable_is_too_much() {
        assertThat(verdict(branch("250", "1"), fuse("300.1"))).isEqualTo("Stop");
    }

    @Test
    void derating_counts() {
        assertThat(verdict(branch("250", "0.9"), fuse("270"))).isEqualTo("OK");
        assertThat(verdict(branch("250", "0.89"), fuse("270"))).isEqualTo("Stop");
    }

    @Test
    void a_fuse_against_short_circuits_only_may_be_larger_and_is_to_be_looked_at() {
        Fuse large = fuse("400", "500", "20", "310000", Guards.SHORT_CIRCUIT);

        BranchCheck check = check(branch("250", "1"), with(null, large), PACK, null);

        assertThat(check.verdict()).isEqualTo("Check");
        assertThat(check.comparisons())
                .filteredOn(judgement -> judgement.verdict().equals("Check"))
                .singleElement()
                .extracting(Comparison::says)
                .asString()
                .contains("keeps the cable from overload, 300 A at most");
    }

    @Test
    void a_load_above_the_cable_is_too_much_even_behind_such_a_fuse_or_on_the_mains() {
        Fuse large = fuse("400", "500", "20", "310000", Guards.SHORT_CIRCUIT);

        assertThat(verdict(branch("301", "1"), large)).isEqualTo("Stop");
        assertThat(verdict(branch(new FedBy.Mains(n("400"), 1), "301", by(null, ""), "1")))
                .isEqualTo("Stop");
        assertThat(verdict(branch(new FedBy.Mains(n("400"), 1), "300", by(null, ""), "1")))
                .isEqualTo("OK");
    }

    @Test
    void a_fuse_for_less_than_the_full_pack_is_too_much() {
        assertThat(verdict(branch("100", "1"), fuse("200", "400", "20", "1", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", "1"), fuse("200", "399.9", "20", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    void what_the_charger_feeds_counts_with_its_own_voltage() {
        Branch out = branch(new FedBy.Charger(n("230")), "16", by("f", ""), "1");
        Branch higher = branch(new FedBy.Charger(n("400")), "16", by("f", ""), "1");

        assertThat(verdict(out, fuse("16", "240", "1", "1", Guards.OVERLOAD))).isEqualTo("OK");
        assertThat(verdict(higher, fuse("16", "240", "6", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    void a_fuse_that_cannot_break_the_short_circuit_is_too_much() {
        assertThat(verdict(branch("100", "1"), fuse("200", "500", "4", "1", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", "1"), fuse("200", "500", "3.9", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    @DisplayName("a cable bears k² S²: (143 × 50)² = 51,122,500 A² s (IEC 60364-4-43, from memory)")
    void heat_of_a_short_circuit() {
        assertThat(verdict(branch("100", "1"), fuse("200", "500", "20", "51122500", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", "1"), fuse("200", "500", "20", "51122501", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Nested
    @DisplayName("A branch without a fuse")
    class Without_a_fuse {

        private Stream<Kind> found(FedBy fedBy, String limitedBy) {
            Branch branch = branch(fedBy, "10", by(null, limitedBy), "1");
            return BranchCheckerTest.found(check(branch, with(null), PACK, null));
        }

        @Test
        void stops_where_pack_or_12_V_battery_or_charger_feed_it() {
            assertThat(found(FROM_PACK, "")).containsExactly(ChargingFinding.NOT_PROTECTED);
            assertThat(found(new FedBy.LowVoltage(), "")).containsExactly(ChargingFinding.NOT_PROTECTED);
            assertThat(found(new FedBy.Charger(n("230")), "")).containsExactly(ChargingFinding.NOT_PROTECTED);
        }

        @Test
        void is_to_be_confirmed_where_the_data_says_what_else_limits_the_current() {
            assertThat(found(FROM_PACK, "The shunt opens at 12 A."))
                    .containsExactly(ChargingFinding.PROTECTED_WITHOUT_FUSE);
        }

        @Test
        void is_fine_where_only_the_mains_feed_it() {
            assertThat(found(new FedBy.Mains(n("230"), 1), "")).isEmpty();
        }
    }

    @Nested
    @DisplayName("A branch that is fed from its other end too")
    class Fed_from_both_ends {

        private BranchCheck checked(@Nullable String farFuse, String limitedBy, String farAmps) {
            Protection protection = new Protection(
                    new Protection.Fuse("f", 0), new Protection.FarEnd(farFuse, limitedBy), "");
            Fuse far = new Fuse("far", "Far fuse", PART, n(farAmps), n("500"), n("20"), n("1"), Guards.OVERLOAD);
            return check(branch(FROM_PACK, "100", protection, "1"), with(null, fuse("250"), far), PACK, null);
        }

        @Test
        void stops_where_nothing_protects_it_there() {
            assertThat(found(checked(null, "", "250"))).containsExactly(ChargingFinding.FAR_END_NOT_PROTECTED);
        }

        @Test
        void has_a_second_fuse_or_a_feed_that_limits_its_current() {
            assertThat(checked("far", "", "250").verdict()).isEqualTo("OK");
            assertThat(checked(null, "The charger limits it.", "250").verdict()).isEqualTo("OK");
        }

        @Test
        void the_second_fuse_keeps_the_cable_as_the_first_does() {
            assertThat(found(checked("far", "", "300.1"))).containsExactly(ChargingFinding.FUSE_ABOVE_CABLE);
        }
    }

    @Nested
    @DisplayName("Between what feeds it and its fuse")
    class Distance {

        private Stream<Kind> found(int afterMm) {
            Protection protection = new Protection(new Protection.Fuse("f", afterMm), null, "");
            ElectricLimits limits = new ElectricLimits(null, 300, null, "own value");
            return BranchCheckerTest.found(
                    check(branch(FROM_PACK, "100", protection, "1"), with(limits, fuse("250")), PACK, null));
        }

        @Test
        void a_cable_is_as_short_as_the_workshop_says() {
            assertThat(found(300)).isEmpty();
            assertThat(found(301)).containsExactly(ChargingFinding.FUSE_FAR_FROM_SOURCE);
        }
    }

    @Nested
    @DisplayName("On 12 V")
    class On_12_volts {

        private final Branch branch = branch(new FedBy.LowVoltage(), "180", by("f", ""), "1");

        @Test
        @DisplayName("a short circuit of 14.4 V / 7.2 mΩ = 2 kA is what the fuse must break")
        void breaking() {
            assertThat(verdict(branch, fuse("250", "32", "2", "1", Guards.OVERLOAD)))
                    .isEqualTo("OK");
            assertThat(found(check(
                            branch, with(null, fuse("250", "32", "1.9", "1", Guards.OVERLOAD)), PACK, null)))
                    .containsExactly(ChargingFinding.SHORT_CIRCUIT_ABOVE_FUSE);
        }

        @Test
        void the_pack_need_not_be_known() {
            Electrics electrics = with(null, fuse("250", "32", "2", "1", Guards.OVERLOAD));

            assertThat(check(branch, electrics, null, null).verdict()).isEqualTo("OK");
            assertThat(found(check(branch("100", "1"), electrics, null, null)))
                    .contains(ChargingFinding.BRANCH_NOT_JUDGED);
        }
    }

    @Nested
    @DisplayName("The voltage that is lost")
    class Drop {

        private BranchCheck at(String percent) {
            ElectricLimits limits = new ElectricLimits(n(percent), null, null, "own value");
            return check(branch(new FedBy.LowVoltage(), "100", by("f", ""), "1"), with(limits, fuse("250")), PACK, 2000);
        }

        @Test
        @DisplayName("is 2 × 0.386 Ω/km × 1.41265 × 2 m × 100 A = 0.218 V, 1.82 % of 12 V: looked at above the limit")
        void against_its_limit() {
            VoltageDrop drop = at("2").drop();

            assertThat(drop).isNotNull();
            assertThat(drop.volts()).isEqualByComparingTo("0.21811316");
            assertThat(found(at("1.818"))).isEmpty();
            assertThat(found(at("1.817"))).containsExactly(ChargingFinding.DROP_ABOVE_LIMIT);
        }
    }
}
