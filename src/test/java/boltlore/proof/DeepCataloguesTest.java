package boltlore.proof;

import static boltlore.sketch.PositionSketch.each;
import static boltlore.sketch.PositionSketch.is;
import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.faults.Outcome;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.logic.KitConditions;
import boltlore.logic.OrderCounter;
import boltlore.logic.PartConditions;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.order.LeftOut;
import boltlore.proof.kinds.Kinds;
import boltlore.resolution.Resolution;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import boltlore.sketch.CatalogueSketch;
import boltlore.sketch.PartSketch;
import boltlore.sketch.PositionSketch;
import java.math.BigInteger;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Chains through a whole catalogue, far deeper than any workshop's, are no deeper for the program. */
class DeepCataloguesTest {

    private static final int DEEP = 2_000;

    private static String part(int place) {
        return "P-%04d".formatted(place);
    }

    private static CatalogueSketch chain(UnaryOperator<PartSketch> none, BiConsumer<PartSketch, String> link) {
        CatalogueSketch sketch = new CatalogueSketch()
                .option("drive", "small", "large")
                .position(PositionSketch.at("top").line("top", part(0), "1", is("drive", "large")));
        for (int i = 0; i < DEEP; i++) {
            PartSketch made = none.apply(PartSketch.made(part(i)));
            if (i + 1 < DEEP) {
                link.accept(made, part(i + 1));
            } else {
                made.massKg("1");
            }
            sketch.part(made);
        }
        return sketch;
    }

    private static void held(Catalogue catalogue, String last) {
        Family family = catalogue.family(CatalogueSketch.FAMILY);
        Choices choices = Choices.of(family, Map.of(new OptionName("drive"), "large"));
        Resolver resolver = new RuleResolver(catalogue);
        Resolution.Resolved resolved = (Resolution.Resolved)
                ((Outcome.Sound<Resolution>) resolver.resolve(choices, new LeftOut.Undecided())).value();

        assertThat(resolved.kit().quantities()).containsKey(new PartNumber(last));
        FamilyProof proof = Prover.prove(catalogue, family, Kinds.all(), Deadline.NONE, Prover.Progress.NONE);
        assertThat(proof.only(Answer.Unproved.class)).isEmpty();
        assertThat(proof.defects().map(defect -> defect.statement().kind().name()))
                .doesNotContain("part in no order");
        Condition present =
                new PartConditions(new KitConditions(catalogue, family, false)).present(new PartNumber(last));
        assertThat(new OrderCounter(family).with(present)).isEqualTo(new Count.Exactly(BigInteger.ONE));
    }

    @Test
    void parts_inside_parts() {
        held(chain(part -> part, (part, inner) -> part.contains(inner, "1")).draw(), part(DEEP - 1));
    }

    @Test
    void parts_that_need_parts() {
        held(
                chain(part -> part.massKg("1"), (part, needed) -> part.needs(each(needed, "1")))
                        .draw(),
                part(DEEP - 1));
    }

    @Test
    void positions_filled_where_others_are() {
        CatalogueSketch sketch = new CatalogueSketch()
                .option("drive", "small", "large")
                .part(PartSketch.bought("LAST"))
                .part(PartSketch.bought("FIRST"))
                .position(PositionSketch.at("p0").line("l0", "FIRST", "1", is("drive", "large")));
        for (int i = 1; i < DEEP / 10; i++) {
            sketch.position(PositionSketch.at("p" + i)
                    .line(
                            "l" + i,
                            i + 1 == DEEP / 10 ? "LAST" : "FIRST",
                            "1",
                            new Condition.Filled(new PositionName("p" + (i - 1)))));
        }
        held(sketch.draw(), "LAST");
    }
}
