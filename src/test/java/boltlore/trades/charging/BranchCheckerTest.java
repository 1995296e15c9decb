package boltlore.trades.charging;

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
import boltlore.catalogue.Feeds;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Load, fuse and cable of one branch")
class BranchCheckerTest {

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
    @DisplayName(
            "what flows for a short time counts against the pack's peak, and against cable and fuse as if for hours")
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
}
