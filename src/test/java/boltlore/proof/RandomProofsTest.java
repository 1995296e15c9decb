package boltlore.proof;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.oracle.Oracle;
import boltlore.oracle.RandomCatalogue;
import boltlore.oracle.Variants;
import boltlore.order.LeftOut;
import boltlore.trial.Trial;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("On small catalogues drawn by chance")
class RandomProofsTest {

    @Property(tries = 150)
    @Label("formulas and oracle say the same of every order, with unused brackets in and left out")
    void formulas_say_the_same(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Family family = catalogue.family(Trial.FAMILY);
        Oracle oracle = new Oracle(catalogue);
        SaidOfKits kept = new SaidOfKits(KitView.of(catalogue, family, false, Deadline.NONE), false);
        SaidOfKits leftOut = new SaidOfKits(KitView.of(catalogue, family, true, Deadline.NONE), true);

        Assume.that(kept.isWhole() && leftOut.isWhole());
        for (Choices order : new Variants(family).spread(40)) {
            assertThat(kept.of(order)).isEqualTo(Said.byRules(oracle.resolve(order, new LeftOut.Undecided())));
            assertThat(leftOut.of(order)).isEqualTo(Said.byRules(oracle.resolve(order, new LeftOut.AllUnused())));
        }
    }

    @Property(tries = 60)
    @Label("every statement is proved or refuted as looking at every order shows, and touches as many")
    void statements_are_answered_as_every_order_shows(@ForAll long seed) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        Family family = catalogue.family(Trial.FAMILY);
        FamilyProof proof = DemoFamily.prove(catalogue, family);
        LookedAt all = LookedAt.of(catalogue, family);

        assertThat(proof.answers())
                .noneMatch(Answer.Unproved.class::isInstance)
                .allSatisfy(answer -> assertThat(refuted(answer, all))
                        .as(answer.statement().title())
                        .isEqualTo(all.refutes(answer.statement())));
        assertThat(proof.defects()).allSatisfy(defect -> all.checkTouched(defect));
    }

    private static boolean refuted(Answer answer, LookedAt all) {
        boolean open = answer instanceof Answer.NotDecided || answer instanceof Answer.SaidAlready;
        return open ? all.refutes(answer.statement()) : answer instanceof Answer.Defect;
    }

    @Property(tries = 150)
    @Label("the two ways to count agree with trying everything")
    void counts_agree(@ForAll long seed) {
        Family family = RandomCatalogue.draw(seed).family(Trial.FAMILY);
        List<Choices> plain = PlainVariants.list(family).orElseThrow();

        assertThat(PlainVariants.ordersEach(family).longValueExact() * plain.size())
                .isEqualTo(new Variants(family).all().size());
    }
}
