package boltlore.trades.charging;

import static boltlore.trades.charging.SomeBranch.FROM_PACK;
import static boltlore.trades.charging.SomeBranch.PACK;
import static boltlore.trades.charging.SomeBranch.PART;
import static boltlore.trades.charging.SomeBranch.branch;
import static boltlore.trades.charging.SomeBranch.by;
import static boltlore.trades.charging.SomeBranch.check;
import static boltlore.trades.charging.SomeBranch.found;
import static boltlore.trades.charging.SomeBranch.fuse;
import static boltlore.trades.charging.SomeBranch.n;
import static boltlore.trades.charging.SomeBranch.verdict;
import static boltlore.trades.charging.SomeBranch.with;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Branch.FedBy;
import boltlore.catalogue.Branch.Protection;
import boltlore.catalogue.ElectricLimits;
import boltlore.catalogue.Electrics;
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.findings.Kind;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("What protects a branch, where, and what is lost on the way")
class BranchProtectionTest {

    @Nested
    @DisplayName("A branch without a fuse")
    class Without_a_fuse {

        private Stream<Kind> found(FedBy fedBy, String limitedBy) {
            Branch branch = branch(fedBy, "10", by(null, limitedBy), "1");
            return SomeBranch.found(check(branch, with(null), PACK, null));
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
            Protection protection =
                    new Protection(new Protection.Fuse("f", 0), new Protection.FarEnd(farFuse, limitedBy), "");
            Fuse far = new Fuse("far", "Far fuse", PART, n(farAmps), n("500"), n("20"), n("1"), Guards.OVERLOAD);
            return check(branch(FROM_PACK, "100", protection, "1"), with(null, fuse("250"), far), PACK, null);
        }

        @Test
        void stops_where_nothing_protects_it_there() {
            assertThat(found(checked(null, "", "250"))).containsExactly(ChargingFinding.FAR_END_NOT_PROTECTED);
        }

        private Stream<Kind> unsaid(Feeds feeds) {
            Branch plain = branch(FROM_PACK, "100", by("f", ""), "1");
            Branch branch = new Branch(
                    plain.name(),
                    plain.says(),
                    plain.when(),
                    plain.position(),
                    FROM_PACK,
                    n("100"),
                    feeds,
                    plain.protection(),
                    PART,
                    n("1"),
                    "");
            BranchLoad load = new BranchLoad(n("100"), n("100"), true, "");
            return found(BranchChecker.check(branch, with(null, fuse("250")), SomeBranch.CABLE, PACK, load, null));
        }

        @Test
        void is_one_that_joins_strings_or_is_charged_through_even_where_the_data_leaves_that_end_out() {
            assertThat(unsaid(new Feeds.Branches(List.of("battery"), n("0.6"))))
                    .containsExactly(ChargingFinding.FAR_END_NOT_PROTECTED);
            assertThat(unsaid(Feeds.Chosen.CHARGER_OUTPUT)).containsExactly(ChargingFinding.FAR_END_NOT_PROTECTED);
            assertThat(unsaid(Feeds.Chosen.DIRECT_CHARGING)).containsExactly(ChargingFinding.FAR_END_NOT_PROTECTED);
            assertThat(unsaid(new Feeds.Branches(List.of("drive"), n("1")))).isEmpty();
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
            return SomeBranch.found(
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
            assertThat(found(check(branch, with(null, fuse("250", "32", "1.9", "1", Guards.OVERLOAD)), PACK, null)))
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
            return check(
                    branch(new FedBy.LowVoltage(), "100", by("f", ""), "1"), with(limits, fuse("250")), PACK, 2000);
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
