package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.MusMcsEnumeration;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Says of choices in one family what may still be chosen, and explains what may not. Keeps what it has learnt of the
 * family from one question to the next; not safe to share between threads.
 */
public final class Chooser {

    /** Each of so many choices is tried alone; of more only a few of a first refutation. */
    private static final int MOST_ALONE = 100;

    private final Family family;
    private final Deadline deadline;
    private final ValidOrders orders;
    private final LimitsAgainst limits;
    private final Map<Choice, Condition> conditions = new HashMap<>();

    public Chooser(Family family) {
        this(family, Deadline.NONE);
    }

    public Chooser(Family family, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
        this.orders = new ValidOrders(family, family.limits(), deadline);
        this.limits = new LimitsAgainst(family, deadline);
    }

    public Family family() {
        return family;
    }

    /** All valid orders of the family. */
    ValidOrders orders() {
        return orders;
    }

    public ChoiceState standing(Choices choices) {
        Set<Choice> open = orders.values(conditions(list(choices)));
        boolean valid = !open.isEmpty() || (family.options().isEmpty() && orders.some());
        return valid ? new ChoiceState.Sound(choices, open) : new ChoiceState.Contradicted(choices);
    }

    /** Why the choices contradict each other; preferably those that mean least to the customer. */
    public Conflict conflict(Choices choices, Importance importance) {
        return conflict(list(choices), List.of(), importance);
    }

    /**
     * Why a value cannot be chosen in addition, or instead of what is chosen for its option: where the others would allow
     * it, that choice alone stands against it.
     */
    public Conflict whyClosed(Choices choices, Choice wanted, Importance importance) {
        List<Choice> others = others(choices, wanted.option());
        Condition value = condition(wanted);
        if (some(others, value)) {
            return new Conflict(own(choices, wanted.option()), List.of());
        }
        return reason(others, List.of(value), importance);
    }

    /** Why an option that nobody has chosen has just this one value left. */
    public Conflict whyForced(Choices choices, Choice forced, Importance importance) {
        return reason(others(choices, forced.option()), List.of(new Condition.Not(condition(forced))), importance);
    }

    /**
     * A choice that is enough by itself is the plainest reason, and of several that with the fewest limits; else a minimal
     * conflict.
     */
    private Conflict reason(List<Choice> requests, List<Condition> wanted, Importance importance) {
        Optional<Conflict> plainest = requests.size() <= MOST_ALONE && Requests.fulfillable(this, List.of(), wanted)
                ? importance.leastFirst(family, requests).stream()
                        .filter(alone -> !Requests.fulfillable(this, List.of(alone), wanted))
                        .map(alone -> told(List.of(alone), wanted))
                        .min(Comparator.comparingInt(
                                conflict -> conflict.limits().size()))
                : Optional.empty();
        return plainest.orElseGet(() -> conflict(requests, wanted, importance));
    }

    /** Why these choices cannot stand with what is wanted, which may be among them. */
    Conflict conflictAmong(List<Choice> choices, List<Choice> wanted, Importance importance) {
        List<Choice> others =
                choices.stream().filter(choice -> !wanted.contains(choice)).toList();
        return conflict(others, conditions(wanted), importance);
    }

    /** Why no valid order that keeps the choices fulfils these conditions, which range over options alone. */
    public Conflict against(Choices choices, List<Condition> wanted, Importance importance) {
        return conflict(list(choices), wanted, importance);
    }

    /** Every minimal conflict among the choices and with what is wanted, which replaces what is chosen for its option. */
    public AllConflicts allConflicts(Choices choices, List<Choice> wanted, Importance importance) {
        Choices others = choices;
        for (Choice choice : wanted) {
            others = others.without(choice.option());
        }
        return AllConflicts.of(this, importance.leastFirst(family, list(others)), conditions(wanted), deadline);
    }

    Conflict told(List<Choice> against, List<Condition> wanted) {
        List<Condition> given = conditions(against);
        given.addAll(wanted);
        Set<Choice> choices = Set.copyOf(against);
        List<Choice> ordered = family.options().stream()
                .flatMap(option -> option.valueNames().stream().map(value -> new Choice(option.name(), value)))
                .filter(choices::contains)
                .toList();
        return new Conflict(ordered, limits.conflict(given));
    }

    private Conflict conflict(List<Choice> requests, List<Condition> wanted, Importance importance) {
        List<Choice> against = Requests.conflict(this, importance.leastFirst(family, requests), wanted);
        return told(against, wanted);
    }

    boolean some(Collection<Choice> choices, Condition... also) {
        List<Condition> all = conditions(choices);
        all.addAll(List.of(also));
        return orders.some(all);
    }

    List<Condition> conditions(Collection<Choice> choices) {
        List<Condition> all = new ArrayList<>(choices.size() + 1);
        choices.forEach(choice -> all.add(condition(choice)));
        return all;
    }

    Condition condition(Choice choice) {
        return conditions.computeIfAbsent(choice, Wanted::of);
    }

    /** The choices one by one, in the family's order of options. */
    public static List<Choice> list(Choices choices) {
        List<Choice> all = new ArrayList<>();
        choices.values().forEach((option, value) -> all.add(new Choice(option, value)));
        return all;
    }

    private static List<Choice> others(Choices choices, OptionName option) {
        return list(choices.without(option));
    }

    private static List<Choice> own(Choices choices, OptionName option) {
        return list(choices).stream()
                .filter(choice -> choice.option().equals(option))
                .toList();
    }

    /**
     * All minimal conflicts, those of fewest choices first.
     *
     * @param complete false where there are more than were looked for
     */
    public record AllConflicts(List<Conflict> conflicts, boolean complete) {

        private static final int MOST = 1000;

        static AllConflicts of(Chooser chooser, List<Choice> requests, List<Condition> wanted, Deadline deadline) {
            MusMcsEnumeration<Choice> sets =
                    MusMcsEnumeration.of(requests, some -> Requests.fulfillable(chooser, some, wanted), MOST, deadline);
            List<Conflict> told = sets.conflicts().stream()
                    .map(conflict -> chooser.told(conflict, wanted))
                    .sorted(Comparator.<Conflict>comparingInt(
                                    conflict -> conflict.choices().size())
                            .thenComparing(conflict -> conflict.choices().toString()))
                    .toList();
            return new AllConflicts(told, sets.complete());
        }
    }
}
