package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Count;
import boltlore.logic.Deadline;
import boltlore.measure.PartNumber;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Kits of any small catalogue")
class KitProperties {

    @Property(tries = 120)
    void the_best_kits_are_those_that_building_every_kit_finds(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed, seed % 2 == 0);
        Catalogue catalogue = kits.catalogue();
        Resolver resolver = new RuleResolver(catalogue);
        Family family = catalogue.family("small");
        Choices keeping = kits.families().choices(family);
        Enumerated every = Enumerated.of(resolver, keeping);
        BestKits best = new BestKits(resolver, family, Deadline.NONE);

        if (every.kits().isEmpty()) {
            assertThat(best.best(Aim.CHEAPEST, keeping)).isEmpty();
            return;
        }
        assertThat(best.best(Aim.CHEAPEST, keeping).orElseThrow().sum())
                .isCloseTo(every.leastCost(), offset(SmallKits.hair()));
        assertThat(best.best(Aim.DEAREST, keeping).orElseThrow().sum())
                .isCloseTo(every.mostCost(), offset(SmallKits.hair()));
        assertThat(best.best(Aim.LIGHTEST, keeping).orElseThrow().sum())
                .isCloseTo(every.leastMassKg(), offset(SmallKits.hair()));
        BestKit soonest = best.best(Aim.SOONEST, keeping).orElseThrow();
        assertThat(soonest.leadDays()).isEqualTo(every.leastDays());
        assertThat(soonest.sum()).isCloseTo(every.leastCostOfSoonest(), offset(SmallKits.hair()));
    }

    @Property(tries = 120)
    void what_is_told_to_be_as_good_is_as_good_and_nothing_else_is(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed, seed % 2 == 0);
        Catalogue catalogue = kits.catalogue();
        Resolver resolver = new RuleResolver(catalogue);
        Family family = catalogue.family("small");
        Choices keeping = kits.families().choices(family);
        Optional<BestKit> best = new BestKits(resolver, family, Deadline.NONE).best(Aim.CHEAPEST, keeping);
        if (best.isPresent()) {
            List<Choice> asGood = new ArrayList<>(Chooser.list(best.get().choices()));
            best.get()
                    .ties()
                    .forEach(
                            (option, values) -> values.forEach(value -> asGood.add(new Choice(option, value.value()))));
            List<Choice> built = Enumerated.of(resolver, keeping).kits().stream()
                    .filter(kit -> kit.cost().subtract(best.get().sum()).abs().compareTo(SmallKits.hair()) < 0)
                    .flatMap(kit -> Chooser.list(kit.choices()).stream())
                    .distinct()
                    .toList();
            assertThat(asGood).containsExactlyInAnyOrderElementsOf(built);
        }
    }

    @Property(tries = 120)
    void sure_parts_are_those_of_every_completion_with_their_least_quantity(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed);
        Catalogue catalogue = kits.catalogue();
        Family family = catalogue.family("small");
        Choices keeping = kits.families().choices(family);
        FamilyQuestions questions = new FamilyQuestions(catalogue, new Chooser(family), Deadline.NONE);

        SureParts sure = questions.sure(keeping);

        EnumeratedParts every = EnumeratedParts.of(new RuleResolver(catalogue).plan("small"), keeping);
        assertThat(sure.completions()).isEqualTo(new Count.Exactly(BigInteger.valueOf(every.completions())));
        assertThat(sure.least().keySet()).isEqualTo(every.least().keySet());
        every.least()
                .forEach((part, least) -> assertThat(sure.least().get(part)).isEqualByComparingTo(least));
    }

    @Property(tries = 120)
    void the_condition_of_a_part_holds_for_exactly_the_orders_that_bring_it(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed);
        Catalogue catalogue = kits.catalogue();
        Family family = catalogue.family("small");
        Choices keeping = kits.families().choices(family);
        Resolver resolver = new RuleResolver(catalogue);
        FamilyQuestions questions = new FamilyQuestions(catalogue, new Chooser(family), Deadline.NONE);
        List<Choices> orders = SmallFamilies.completions(keeping);
        for (PartNumber part : catalogue.parts().keySet()) {
            List<Choices> bringing = orders.stream()
                    .filter(order -> EnumeratedParts.of(resolver.plan("small"), order)
                            .least()
                            .containsKey(part))
                    .toList();
            FamilyQuestions.Bringing told = questions.bringing(part, keeping);
            assertThat(told.bringing()).isEqualTo(new Count.Exactly(BigInteger.valueOf(bringing.size())));
            assertThat(told.all()).isEqualTo(new Count.Exactly(BigInteger.valueOf(orders.size())));
            Said.exactly(told.when().orElseThrow(), bringing, orders);
        }
    }

    @Property(tries = 100)
    void two_parts_ship_together_in_the_order_shown_or_in_none(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed);
        Catalogue catalogue = kits.catalogue();
        Family family = catalogue.family("small");
        Choices keeping = kits.families().choices(family);
        Resolver resolver = new RuleResolver(catalogue);
        List<PartNumber> pair = List.of(new PartNumber("P-2"), new PartNumber("P-5"));
        FamilyQuestions questions = new FamilyQuestions(catalogue, new Chooser(family), Deadline.NONE);

        FamilyQuestions.Together together = questions.together(pair, keeping);

        List<Choices> both = SmallFamilies.completions(keeping).stream()
                .filter(order -> EnumeratedParts.of(resolver.plan("small"), order)
                        .least()
                        .keySet()
                        .containsAll(pair))
                .toList();
        if (together instanceof FamilyQuestions.Together.Possible possible) {
            assertThat(both).contains(possible.order());
        } else {
            assertThat(both).isEmpty();
        }
    }
}
