package boltlore.trades.charging;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Branch;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Fuse;
import boltlore.catalogue.Fuse.Guards;
import boltlore.catalogue.Pack;
import boltlore.catalogue.PowerCable;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Load, fuse and cable of one branch")
class BranchCheckerTest {

    private static final PartNumber PART = new PartNumber("P");

    /** 400 V when full, 0.1 Ω: a short circuit of 4 kA. */
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
            n("100"));

    private static final PowerCable CABLE = new PowerCable(PART, n("50"), n("1000"), n("300"), "free air", n("143"));

    private static BigDecimal n(String number) {
        return new BigDecimal(number);
    }

    private static Branch branch(String load, @Nullable String volts, String derating) {
        return new Branch(
                "b",
                "Battery to box",
                Condition.ALWAYS,
                new PositionName("cable"),
                n(load),
                volts == null ? null : n(volts),
                "f",
                PART,
                n(derating),
                "");
    }

    private static Fuse fuse(String amps, String volts, String kiloamps, String a2s, Guards guards) {
        return new Fuse("f", "Fuse", PART, n(amps), n(volts), n(kiloamps), n(a2s), guards);
    }

    private static Fuse fuse(String amps) {
        return fuse(amps, "500", "20", "90000", Guards.OVERLOAD);
    }

    private static String verdict(Branch branch, @Nullable Fuse fuse) {
        return BranchChecker.check(branch, fuse, CABLE, PACK).verdict();
    }

    @Test
    void load_up_to_fuse_up_to_cable_is_fine_at_both_ends() {
        assertThat(verdict(branch("250", null, "1"), fuse("250"))).isEqualTo("OK");
        assertThat(verdict(branch("250", null, "1"), fuse("300"))).isEqualTo("OK");
    }

    @Test
    void a_load_above_its_fuse_is_too_much() {
        assertThat(verdict(branch("250.1", null, "1"), fuse("250"))).isEqualTo("Stop");
    }

    @Test
    void a_load_above_what_the_pack_bears_is_too_much_but_not_one_of_the_mains() {
        Fuse large = fuse("290");

        assertThat(verdict(branch("280", null, "1"), large)).isEqualTo("OK");
        assertThat(verdict(branch("280.1", null, "1"), large)).isEqualTo("Stop");
        assertThat(verdict(branch("280.1", "400", "1"), large)).isEqualTo("OK");
    }

    @Test
    void a_fuse_above_its_cable_is_too_much() {
        assertThat(verdict(branch("250", null, "1"), fuse("300.1"))).isEqualTo("Stop");
    }

    @Test
    void derating_counts() {
        assertThat(verdict(branch("250", null, "0.9"), fuse("270"))).isEqualTo("OK");
        assertThat(verdict(branch("250", null, "0.89"), fuse("270"))).isEqualTo("Stop");
    }

    @Test
    void a_fuse_against_short_circuits_only_may_be_larger_and_is_to_be_looked_at() {
        Fuse large = fuse("400", "500", "20", "310000", Guards.SHORT_CIRCUIT);

        BranchCheck check = BranchChecker.check(branch("250", null, "1"), large, CABLE, PACK);

        assertThat(check.verdict()).isEqualTo("Check");
        assertThat(check.comparisons())
                .filteredOn(judgement -> judgement.verdict().equals("Check"))
                .singleElement()
                .extracting(Comparison::says)
                .asString()
                .contains("keeps the cable from overload, 300 A at most");
    }

    @Test
    void a_load_above_the_cable_is_too_much_even_behind_such_a_fuse_or_none() {
        Fuse large = fuse("400", "500", "20", "310000", Guards.SHORT_CIRCUIT);

        assertThat(verdict(branch("301", null, "1"), large)).isEqualTo("Stop");
        assertThat(verdict(branch("301", null, "1"), null)).isEqualTo("Stop");
        assertThat(verdict(branch("300", "400", "1"), null)).isEqualTo("OK");
    }

    @Test
    void a_fuse_for_less_than_the_full_pack_is_too_much() {
        assertThat(verdict(branch("100", null, "1"), fuse("200", "400", "20", "1", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", null, "1"), fuse("200", "399.9", "20", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    void a_branch_of_the_mains_counts_with_its_own_voltage() {
        assertThat(verdict(branch("16", "230", "1"), fuse("16", "240", "1", "1", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("16", "400", "1"), fuse("16", "240", "6", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    void a_fuse_that_cannot_break_the_short_circuit_is_too_much() {
        assertThat(verdict(branch("100", null, "1"), fuse("200", "500", "4", "1", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", null, "1"), fuse("200", "500", "3.9", "1", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }

    @Test
    @DisplayName("a cable bears k² S²: (143 × 50)² = 51,122,500 A² s (IEC 60364-4-43, from memory)")
    void heat_of_a_short_circuit() {
        assertThat(verdict(branch("100", null, "1"), fuse("200", "500", "20", "51122500", Guards.OVERLOAD)))
                .isEqualTo("OK");
        assertThat(verdict(branch("100", null, "1"), fuse("200", "500", "20", "51122501", Guards.OVERLOAD)))
                .isEqualTo("Stop");
    }
}
