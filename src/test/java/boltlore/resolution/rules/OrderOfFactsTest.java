package boltlore.resolution.rules;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.oracle.RandomCatalogue;
import boltlore.oracle.Variants;
import boltlore.resolution.FamilyPlan;
import boltlore.resolution.Quantities;
import boltlore.trial.Trial;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Facts told in another order")
class OrderOfFactsTest {

    private static UnaryOperator<List<Object>> shuffledBy(long seed) {
        Random random = new Random(seed);
        return facts -> {
            List<Object> shuffled = new ArrayList<>(facts);
            Collections.shuffle(shuffled, random);
            return shuffled;
        };
    }

    /** All stages: the kit with everything, then without its unused brackets. */
    private static List<KitConclusions> conclusions(
            FamilyPlan plan, Choices choices, UnaryOperator<List<Object>> order) {
        List<KitConclusions> conclusions = new ArrayList<>();
        for (boolean without : List.of(false, true)) {
            RuleSession session = RuleSession.inOrder(order);
            try (KitRules rules = new KitRules(plan, new PartFacts(plan), choices, without, session)) {
                rules.leaveOut(without ? rules.unused() : Set.of());
                conclusions.add(rules.count(Quantities.sum(plan, choices, rules.lines(), rules.filled())));
            }
        }
        return conclusions;
    }

    @Property(tries = 150)
    @Label("lead to the same conclusions")
    void same_conclusions(@ForAll long seed, @ForAll long order) {
        Catalogue catalogue = RandomCatalogue.draw(seed);
        FamilyPlan plan = new FamilyPlan(catalogue, catalogue.family(Trial.FAMILY));
        UnaryOperator<List<Object>> shuffled = shuffledBy(order);
        for (Choices choices : new Variants(plan.family()).spread(4)) {
            assertThat(conclusions(plan, choices, shuffled))
                    .isEqualTo(conclusions(plan, choices, UnaryOperator.identity()));
        }
    }
}
