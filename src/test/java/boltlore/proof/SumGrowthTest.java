package boltlore.proof;

import static boltlore.sketch.PositionSketch.each;
import static boltlore.sketch.PositionSketch.is;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.proof.kinds.Kinds;
import boltlore.resolution.FindingKind;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigInteger;
import java.time.Duration;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums over many optional lines: what a proof costs grows with the sum, not with the ways in which it can come about. */
class SumGrowthTest {

    private static final Duration PLENTY = Duration.ofSeconds(60);

    private static FamilyProof prove(CatalogueSketch sketch) {
        Catalogue catalogue = sketch.draw();
        return Prover.prove(
                catalogue,
                catalogue.family(CatalogueSketch.FAMILY),
                Kinds.all(),
                Deadline.in(PLENTY.toNanos(), System::nanoTime),
                Prover.Progress.NONE);
    }

    private static CatalogueSketch optional(int many, IntFunction<PositionSketch> position) {
        CatalogueSketch sketch = new CatalogueSketch();
        for (int i = 0; i < many; i++) {
            sketch.option("o" + i, "no", "yes").position(position.apply(i));
        }
        return sketch;
    }

    private static Condition yes(int option) {
        return is("o" + option, "yes");
    }

    /** A line each that brings two bolts, and one that expects as many as half of them bring. */
    private static CatalogueSketch brackets(int many) {
        return optional(many, i -> PositionSketch.at("p" + i).line("l" + i, "BRACKET", "1", yes(i), each("BOLT", "2")))
                .part(PartSketch.bought("BRACKET"))
                .part(PartSketch.bought("BOLT"))
                .part(PartSketch.bought("FRAME"))
                .position(PositionSketch.at("frame").expecting("frame", "FRAME", "BOLT", String.valueOf(many)));
    }

    /** Boxes with a port each and a cable for each, decided apart. */
    private static CatalogueSketch ports(int many) {
        CatalogueSketch sketch = optional(many, i -> PositionSketch.at("p" + i).line("l" + i, "BOX", "1", yes(i)));
        for (int i = 0; i < many; i += 2) {
            sketch.position(PositionSketch.at("c" + i).line("c" + i, "CABLE", "1", yes(i)));
        }
        return sketch.part(PartSketch.bought("BOX").port("out", "PLUG", "CABLE"))
                .part(PartSketch.bought("CABLE"))
                .part(PartSketch.bought("PLUG"));
    }

    @ParameterizedTest
    @ValueSource(ints = {24, 28, 32, 64})
    void brackets_that_each_bring_their_bolts(int many) {
        FamilyProof proof = prove(brackets(many));

        assertThat(proof.only(Answer.Unproved.class)).isEmpty();
        Answer.Defect few = proof.defects()
                .filter(defect -> defect.statement().kind().name().equals(FindingKind.COMPANION_MISSING.written()))
                .findFirst()
                .orElseThrow();
        // Fewer than half of so many lines: (2^n - C(n, n/2)) / 2 orders.
        BigInteger all = BigInteger.TWO.pow(many);
        assertThat(few.touched().orders())
                .isEqualTo(new Count.Exactly(all.subtract(middle(many)).shiftRight(1)));
    }

    private static BigInteger middle(int many) {
        BigInteger middle = BigInteger.ONE;
        for (int i = 1; i <= many / 2; i++) {
            middle = middle.multiply(BigInteger.valueOf(many - many / 2 + i)).divide(BigInteger.valueOf(i));
        }
        return middle;
    }

    @ParameterizedTest
    @ValueSource(ints = {24, 32, 64})
    void ports_and_cables_that_are_decided_apart(int many) {
        FamilyProof proof = prove(ports(many));

        assertThat(proof.only(Answer.Unproved.class)).isEmpty();
        assertThat(proof.defects().map(defect -> defect.statement().title()))
                .contains("interlock open: BOX/out (PLUG)");
    }

    @Test
    void a_sum_that_cannot_be_split_is_said_undecided() {
        Random random = new Random(20261130);
        CatalogueSketch sketch = new CatalogueSketch()
                .part(PartSketch.bought("BOLT"))
                .part(PartSketch.bought("FRAME"))
                .position(PositionSketch.at("frame").expecting("frame", "FRAME", "BOLT", "10000000"));
        for (int i = 0; i < 40; i++) {
            sketch.option("o" + i, "no", "yes")
                    .position(PositionSketch.at("p" + i)
                            .line("l" + i, "BOLT", String.valueOf(1 + random.nextInt(1_000_000)), yes(i)));
        }

        FamilyProof proof = prove(sketch);

        assertThat(proof.only(Answer.NotDecided.class)
                        .map(answer -> answer.statement().title()))
                .contains("associated part missing: BOLT (frame)");
        assertThat(proof.only(Answer.Unproved.class)).isEmpty();
    }
}
