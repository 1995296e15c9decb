package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.resolution.Resolver;
import boltlore.resolution.rules.RuleResolver;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Repairs in any small catalogue")
class RepairProperties {

    private record Case(Family family, Choices choices, Choice wanted, Importance importance, Opening opening) {

        static Case of(long seed) {
            SmallKits kits = new SmallKits(seed);
            Catalogue catalogue = kits.catalogue();
            Family family = catalogue.family("small");
            Choices choices = kits.families().choices(family);
            Choice wanted = kits.families().choice(family);
            Importance importance = kits.families().importance(family);
            Chooser chooser = new Chooser(family);
            BestKits best = new BestKits(new RuleResolver(catalogue), family, Deadline.NONE);
            return new Case(
                    family,
                    choices,
                    wanted,
                    importance,
                    new Repairer(chooser, best).opening(choices, wanted, importance));
        }

        Choices after() {
            return choices.with(wanted.option(), wanted.value());
        }

        /** Whether some order is valid when these choices are given up for what is wanted. */
        boolean works(Set<Choice> givenUp) {
            Choices left = after();
            for (Choice choice : givenUp) {
                left = left.without(choice.option());
            }
            return !SmallFamilies.completions(left).isEmpty();
        }
    }

    @Property(tries = 250)
    void a_repair_works_keeps_what_is_firm_and_changes_nothing_in_vain(@ForAll long seed) {
        Case tried = Case.of(seed);
        if (tried.opening() instanceof Opening.Repairs repairs) {
            for (Repair repair : repairs.repairs()) {
                Set<Choice> givenUp = Set.copyOf(repair.givenUp());
                assertThat(SmallFamilies.completions(repair.choices())).isNotEmpty();
                assertThat(Chooser.list(repair.choices())).contains(tried.wanted());
                assertThat(givenUp).noneMatch(tried.importance()::isFirm);
                for (Choice choice : givenUp) {
                    Set<Choice> fewer = new HashSet<>(givenUp);
                    fewer.remove(choice);
                    assertThat(tried.works(fewer)).isFalse();
                }
            }
        }
    }

    @Property(tries = 250)
    void all_minimal_repairs_are_found_the_smallest_first(@ForAll long seed) {
        Case tried = Case.of(seed);
        if (tried.opening() instanceof Opening.Repairs repairs) {
            List<Set<Choice>> found = repairs.repairs().stream()
                    .map(repair -> Set.copyOf(repair.givenUp()))
                    .collect(Collectors.toList());
            assertThat(repairs.complete()).isTrue();
            assertThat(found).containsExactlyInAnyOrderElementsOf(minimal(tried));
            assertThat(found).isSortedAccordingTo((one, other) -> one.size() - other.size());
        }
    }

    private static List<Set<Choice>> minimal(Case tried) {
        List<Choice> loose = Chooser.list(tried.after()).stream()
                .filter(choice ->
                        !choice.equals(tried.wanted()) && !tried.importance().isFirm(choice))
                .toList();
        return smallest(loose, tried::works);
    }

    /** Of the sets of these choices that pass, those in which no smaller one lies. */
    private static List<Set<Choice>> smallest(List<Choice> loose, Predicate<Set<Choice>> passes) {
        List<Set<Choice>> working = new ArrayList<>();
        for (int bits = 0; bits < 1 << loose.size(); bits++) {
            Set<Choice> givenUp = new HashSet<>();
            for (int i = 0; i < loose.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    givenUp.add(loose.get(i));
                }
            }
            if (passes.test(givenUp)) {
                working.add(givenUp);
            }
        }
        return working.stream()
                .filter(set -> working.stream().noneMatch(other -> other.size() < set.size() && set.containsAll(other)))
                .toList();
    }

    /** Against every kit built: a change helps where some kit after it has no finding that stops it. */
    @Property(tries = 200)
    void repairs_among_stopped_kits_are_the_smallest_changes_that_give_a_sound_one(@ForAll long seed) {
        SmallKits kits = new SmallKits(seed, true);
        Catalogue catalogue = kits.catalogue();
        Family family = catalogue.family("small");
        Choices choices = kits.families().choices(family);
        Choice wanted = kits.families().choice(family);
        Resolver resolver = new RuleResolver(catalogue);
        Repairer repairer = new Repairer(new Chooser(family), new BestKits(resolver, family, Deadline.NONE));
        Choices after = choices.with(wanted.option(), wanted.value());

        Opening opening = repairer.opening(choices, wanted, Importance.NONE);

        List<Choice> loose = Chooser.list(after).stream()
                .filter(choice -> !choice.equals(wanted))
                .toList();
        List<Set<Choice>> sound = smallest(loose, givenUp -> soundWithout(resolver, after, givenUp));
        if (opening instanceof Opening.Stopped) {
            assertThat(sound).isEmpty();
        } else if (opening instanceof Opening.Repairs repairs) {
            assertThat(repairs.repairs())
                    .extracting(repair -> Set.copyOf(repair.givenUp()))
                    .containsExactlyInAnyOrderElementsOf(sound);
        }
    }

    private static boolean soundWithout(Resolver resolver, Choices choices, Set<Choice> givenUp) {
        Choices left = choices;
        for (Choice choice : givenUp) {
            left = left.without(choice.option());
        }
        return !Enumerated.of(resolver, left).kits().isEmpty();
    }

    @Property(tries = 250)
    void where_no_repair_is_possible_the_firm_choices_exclude_it(@ForAll long seed) {
        Case tried = Case.of(seed);
        if (tried.opening() instanceof Opening.Impossible impossible) {
            assertThat(impossible.conflict().choices()).allMatch(tried.importance()::isFirm);
            Set<Choice> loose = Chooser.list(tried.choices()).stream()
                    .filter(choice -> !tried.importance().isFirm(choice))
                    .filter(choice -> !choice.option().equals(tried.wanted().option()))
                    .collect(Collectors.toSet());
            boolean firmOtherwise = tried.importance().isFirm(tried.wanted());
            assertThat(firmOtherwise || !tried.works(loose)).isTrue();
        }
    }

    @Property(tries = 250)
    void nothing_has_to_be_changed_exactly_where_the_value_is_open_or_can_be_exchanged(@ForAll long seed) {
        Case tried = Case.of(seed);
        if (tried.opening() instanceof Opening.AlreadyOpen) {
            assertThat(tried.works(Set.of())).isTrue();
        } else if (!(tried.opening() instanceof Opening.Impossible)) {
            assertThat(tried.works(Set.of())).isFalse();
        }
    }
}
