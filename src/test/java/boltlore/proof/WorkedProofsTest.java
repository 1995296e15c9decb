package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.checkvalues.CheckTable;
import boltlore.findings.Severity;
import boltlore.logic.All;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.OrderCounter;
import boltlore.logic.ValidOrders;
import boltlore.measure.LineName;
import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Proofs of small families as the literature has them; each test names its row of the table of check values. */
class WorkedProofsTest {

    private static List<String> defects(FamilyProof proof) {
        return proof.defects()
                .filter(defect -> defect.statement().kind().severity() != Severity.NOTE)
                .map(defect -> defect.statement().title() + " " + orders(defect))
                .toList();
    }

    private static String orders(Answer.Defect defect) {
        return ((Count.Exactly) defect.touched().orders()).orders().toString();
    }

    private static String expected(String row) {
        return CheckTable.rows("proof-examples.csv", row)
                .findFirst()
                .orElseThrow()
                .text("expected");
    }

    @Test
    @DisplayName("TS-17 to TS-19, TS-22: the shirt is not void, no value is impossible or forced, no limit redundant")
    void the_shirt_is_clean() {
        assertThat(expected("TS-17")).isEqualTo("no");
        assertThat(List.of(expected("TS-18"), expected("TS-19"), expected("TS-22")))
                .containsOnly("none");

        assertThat(defects(WorkedFamilies.prove("t-shirt"))).isEmpty();
    }

    @Test
    @DisplayName("TS-20: a third limit whose case the others exclude never bites")
    void a_limit_that_never_bites() {
        assertThat(expected("TS-20")).isEqualTo("yes");

        FamilyProof proof = WorkedFamilies.prove("t-shirt-idle-limit");
        assertThat(defects(proof)).containsExactly("limit without effect: l3 0");
        assertThat(proof.defects().findFirst().orElseThrow().limits())
                .extracting(Limit::name)
                .containsExactly("l3", "l1", "l2");
    }

    @Test
    @DisplayName("TS-21: a third limit that follows from the second is implied by it alone")
    void a_limit_that_follows_from_another() {
        assertThat(expected("TS-21")).isEqualTo("L3");

        FamilyProof proof = WorkedFamilies.prove("t-shirt-implied-limit");
        assertThat(defects(proof)).containsExactly("limits that say the same: l2 (l3) 0");
    }

    @Test
    @DisplayName("TS-23: a position with exactly one line in each of the 11 orders is consistent")
    void a_consistent_position() {
        assertThat(expected("TS-23")).isEqualTo("3, 4, 4; 0; 0");

        FamilyProof proof = WorkedFamilies.prove("film-whole");
        assertThat(defects(proof)).isEmpty();
        OrderCounter counter = new OrderCounter(proof.family());
        FamilyView view = FamilyView.of(WorkedFamilies.catalogue(), proof.family(), Deadline.NONE);
        assertThat(List.of("a", "b", "c"))
                .extracting(line -> counter.with(view.kept().kit().called(new LineName(line))))
                .containsExactly(exactly(3), exactly(4), exactly(4));
    }

    private static Count exactly(long orders) {
        return new Count.Exactly(BigInteger.valueOf(orders));
    }

    @Test
    @DisplayName("TS-24: without the third line there is a hole in the 4 orders with STW in large")
    void a_hole() {
        assertThat(expected("TS-24")).isEqualTo("4; STW and large");

        FamilyProof proof = WorkedFamilies.prove("film-hole");
        assertThat(defects(proof)).containsExactly("required part missing: print-film 4");
        Cause cause = proof.defects().findFirst().orElseThrow().cause();
        assertThat(cause.onlyThen()).isTrue();
        assertThat(cause.choices()).extracting(Object::toString).containsExactlyInAnyOrder("print=stw", "size=large");
    }

    @Test
    @DisplayName("TS-25: lines for MIB and for black overlap in 3 orders and leave a hole in 6")
    void an_overlap_and_a_hole() {
        assertThat(expected("TS-25")).isEqualTo("3; 6");

        assertThat(defects(WorkedFamilies.prove("film-overlap")))
                .containsExactly(
                        "two alternatives selected: print-film (a, b) 3", "required part missing: print-film 6");
    }

    @Test
    @DisplayName("TS-26: a line for STW in small is dead by the second limit")
    void a_dead_line() {
        assertThat(expected("TS-26")).startsWith("0 (dead line)");

        FamilyProof proof = WorkedFamilies.prove("film-dead");
        assertThat(defects(proof))
                .containsExactly(
                        "required part missing: print-film 11", "line in no order: d 0", "part in no order: EX-A 0");
        assertThat(proof.defects().skip(1).findFirst().orElseThrow().limits())
                .extracting(Limit::name)
                .containsExactly("l2");
    }

    @Test
    @DisplayName("TS-27, TS-28: a bracket without what it carries, in 2 orders of one family and in none of the other")
    void brackets_that_carry_nothing() {
        assertThat(unused("bracket-black")).isEqualTo(exactly(Long.parseLong(expected("TS-27"))));
        assertThat(unused("bracket-small")).isEqualTo(exactly(Long.parseLong(expected("TS-28"))));
    }

    private static Count unused(String name) {
        Family family = WorkedFamilies.catalogue().family(name);
        KitView kit =
                FamilyView.of(WorkedFamilies.catalogue(), family, Deadline.NONE).kept();
        LineName bracket = new LineName("bracket");
        return new OrderCounter(family)
                .with(All.of(
                        kit.kit().called(bracket), new Condition.Not(kit.kit().useful(bracket))));
    }

    @Test
    @DisplayName("PH-09: no value of the phone's is impossible or forced")
    void the_phone_is_clean() {
        assertThat(defects(WorkedFamilies.prove("phone"))).isEmpty();
    }

    @Test
    @DisplayName("MU-01: four small limits forbid everything, and a minimal conflict among them is named")
    void four_limits_that_forbid_everything() {
        assertThat(expected("MU-01")).isEqualTo("{1, 2}; {1, 3, 4}");

        assertThat(conflict("four-limits")).isIn(List.of("one", "two"), List.of("one", "three", "four"));
    }

    @Test
    @DisplayName("PI-01, PI-02: pigeons without room need each of their 9 or 22 limits to forbid everything")
    void pigeons() {
        assertThat(expected("PI-01")).isEqualTo("9; yes; 9");
        assertThat(expected("PI-02")).isEqualTo("22; yes; 22");

        assertThat(conflict("pigeons-3-2")).hasSize(9);
        assertThat(conflict("pigeons-4-3")).hasSize(22);
    }

    private static List<String> conflict(String family) {
        FamilyProof proof = WorkedFamilies.prove(family);
        assertThat(defects(proof)).containsExactly("no valid order: " + family + " 0");
        return proof.defects().findFirst().orElseThrow().limits().stream()
                .map(Limit::name)
                .toList();
    }

    @Test
    @DisplayName("HD-01: an option that no limit speaks of multiplies the count, and only then")
    void a_free_option() {
        assertThat(expected("HD-01")).isEqualTo("3; 6");

        Family family = WorkedFamilies.catalogue().family("two-of-three");
        assertThat(PlainVariants.list(family).orElseThrow()).hasSize(3);
        assertThat(new OrderCounter(family).all()).isEqualTo(exactly(6));
    }

    @Test
    @DisplayName("TS-03, TS-04: size small forces MIB and black and rules the rest out")
    void what_follows_from_small() {
        assertThat(expected("TS-03")).isEqualTo("print = MIB; colour = black");
        assertThat(expected("TS-04")).isEqualTo("medium; large; white; red; blue; STW");

        ValidOrders shirts = new ValidOrders(WorkedFamilies.catalogue().family("t-shirt"), List.of(), Deadline.NONE);
        Family family = WorkedFamilies.catalogue().family("t-shirt");
        ValidOrders valid = new ValidOrders(family);
        Condition small = Says.is("size", "small");
        assertThat(valid.some(small, Says.is("print", "mib"), Says.is("colour", "black")))
                .isTrue();
        assertThat(List.of(
                        Says.is("size", "medium", "large"),
                        Says.is("colour", "white", "red", "blue"),
                        Says.is("print", "stw")))
                .noneMatch(other -> valid.some(small, other));
        assertThat(shirts.some(small, Says.is("print", "stw"))).isTrue();
    }
}
