package boltlore.choosing;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.choosing.Chooser.AllConflicts;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

@Label("Choosing in any family")
class ChooserProperties {

    @Property(tries = 400)
    void a_value_is_open_exactly_when_some_valid_order_keeps_the_choices_and_has_it(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Chooser chooser = new Chooser(family);
        for (int i = 0; i < 5; i++) {
            Choices choices = small.choices(family);
            Set<Choice> possible = new HashSet<>();
            SmallFamilies.completions(choices).forEach(order -> possible.addAll(Chooser.list(order)));
            ChoiceState standing = chooser.standing(choices);
            if (possible.isEmpty()) {
                assertThat(standing).isInstanceOf(ChoiceState.Contradicted.class);
            } else {
                assertThat(((ChoiceState.Sound) standing).open()).isEqualTo(possible);
            }
        }
    }

    @Property(tries = 400)
    void a_conflict_leaves_no_order_and_without_any_one_of_its_choices_or_limits_there_is_one(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Chooser chooser = new Chooser(family);
        Choices choices = small.choices(family);
        if (chooser.standing(choices) instanceof ChoiceState.Contradicted) {
            Conflict conflict = chooser.conflict(choices, small.importance(family));
            assertThat(Chooser.list(choices)).containsAll(conflict.choices());
            minimal(family, conflict, null);
        }
    }

    @Property(tries = 400)
    void a_closed_value_is_told_by_a_minimal_conflict(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Chooser chooser = new Chooser(family);
        Choices choices = small.choices(family);
        Choice wanted = small.choice(family);
        boolean closed = chooser.standing(choices) instanceof ChoiceState.Sound sound && !sound.isOpen(wanted);
        if (closed) {
            minimal(family, chooser.whyClosed(choices, wanted, small.importance(family)), wanted);
        }
    }

    /** By definition: together with the wanted value they leave no order, and each of them is needed for that. */
    private static void minimal(Family family, Conflict conflict, Choice wanted) {
        assertThat(some(family, conflict.choices(), conflict.limits(), wanted)).isFalse();
        for (Choice choice : conflict.choices()) {
            List<Choice> fewer = new ArrayList<>(conflict.choices());
            fewer.remove(choice);
            assertThat(some(family, fewer, conflict.limits(), wanted)).isTrue();
            assertThat(some(family, fewer, family.limits(), wanted)).isTrue();
        }
        for (Limit limit : conflict.limits()) {
            List<Limit> fewer = new ArrayList<>(conflict.limits());
            fewer.remove(limit);
            assertThat(some(family, conflict.choices(), fewer, wanted)).isTrue();
        }
    }

    /** Plain enumeration over all orders of the family, valid or not. */
    private static boolean some(Family family, List<Choice> choices, List<Limit> limits, Choice wanted) {
        Family unlimited = SmallFamilies.family(family.options(), List.of());
        return SmallFamilies.completions(Choices.of(unlimited, java.util.Map.of())).stream()
                .anyMatch(order -> Chooser.list(order).containsAll(choices)
                        && (wanted == null || Chooser.list(order).contains(wanted))
                        && limits.stream().noneMatch(limit -> Conditions.holds(limit.forbids(), order)));
    }

    @Property(tries = 300)
    void a_forced_value_is_told_by_choices_and_limits_that_exclude_all_others(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Chooser chooser = new Chooser(family);
        Choices choices = small.choices(family);
        if (chooser.standing(choices) instanceof ChoiceState.Sound sound) {
            for (Option option : choices.unsettled()) {
                sound.forced(option).ifPresent(value -> {
                    Choice forced = new Choice(option.name(), value.value());
                    Conflict conflict = chooser.whyForced(choices, forced, Importance.NONE);
                    option.valueNames().stream()
                            .filter(other -> !other.equals(value.value()))
                            .forEach(other -> assertThat(some(
                                            family,
                                            conflict.choices(),
                                            conflict.limits(),
                                            new Choice(option.name(), other)))
                                    .isFalse());
                });
            }
        }
    }

    @Property(tries = 200)
    void all_minimal_conflicts_are_those_that_trying_every_set_of_choices_finds(@ForAll long seed) {
        SmallFamilies small = new SmallFamilies(seed);
        Family family = small.family();
        Choices choices = small.choices(family);
        AllConflicts all = new Chooser(family).allConflicts(choices, List.of(), Importance.NONE);
        List<Choice> requests = Chooser.list(choices);
        Set<Set<Choice>> contradicting = new HashSet<>();
        for (int bits = 0; bits < 1 << requests.size(); bits++) {
            Set<Choice> some = new HashSet<>();
            for (int i = 0; i < requests.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    some.add(requests.get(i));
                }
            }
            if (!some(family, List.copyOf(some), family.limits(), null)) {
                contradicting.add(some);
            }
        }
        Set<Set<Choice>> minimal = new HashSet<>(contradicting);
        minimal.removeIf(
                set -> contradicting.stream().anyMatch(other -> other.size() < set.size() && set.containsAll(other)));
        assertThat(all.complete()).isTrue();
        assertThat(all.conflicts().stream().map(conflict -> Set.copyOf(conflict.choices())))
                .containsExactlyInAnyOrderElementsOf(minimal);
    }
}
