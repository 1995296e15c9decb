package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.Any;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A condition told as cases: each as wide as it can be, none of which can be dropped, and together equivalent to the
 * condition for all valid orders.
 */
final class Cases {

    private final Family family;
    private final ValidOrders valid;
    private final Condition condition;
    private final Condition otherwise;
    private final Set<OptionName> spokenOf;

    private Cases(Family family, ValidOrders valid, Condition condition) {
        this.family = family;
        this.valid = valid;
        this.condition = condition;
        this.otherwise = new Condition.Not(condition);
        this.spokenOf = Mentions.find(condition);
    }

    /** The cases; empty where there are more than that many. */
    static Optional<List<Case>> list(Family family, ValidOrders valid, Condition condition, int most) {
        return new Cases(family, valid, condition).all(most);
    }

    private Optional<List<Case>> all(int most) {
        List<Case> cases = new ArrayList<>();
        List<Condition> asked = new ArrayList<>(List.of(condition));
        Optional<Choices> next = valid.witness(asked);
        while (next.isPresent()) {
            if (cases.size() == most) {
                return Optional.empty();
            }
            Case found = widest(next.get());
            cases.add(found);
            asked.add(new Condition.Not(found.condition()));
            next = valid.witness(asked);
        }
        return Optional.of(needed(cases));
    }

    private Case widest(Choices order) {
        SortedMap<OptionName, SortedSet<String>> values = new TreeMap<>();
        order.values().forEach((option, value) -> {
            if (spokenOf.contains(option)) {
                values.put(option, new TreeSet<>(Set.of(value)));
            }
        });
        Case found = new Case(values);
        for (OptionName option : List.copyOf(values.keySet())) {
            Case wider = found.without(option);
            found = isSound(wider) ? wider : found;
        }
        for (OptionName option : List.copyOf(found.values().keySet())) {
            for (String value : family.option(option).map(Option::valueNames).orElse(List.of())) {
                Case wider = found.with(option, value);
                // A value that adds no order would only make the sentence longer.
                found = adds(found, wider) && isSound(wider) ? wider : found;
            }
        }
        return found;
    }

    private boolean isSound(Case found) {
        return !valid.some(found.condition(), otherwise);
    }

    private boolean adds(Case found, Case wider) {
        return !wider.equals(found) && valid.some(wider.condition(), new Condition.Not(found.condition()));
    }

    private List<Case> needed(List<Case> cases) {
        List<Case> needed = new ArrayList<>(cases);
        for (Case each : cases) {
            List<Condition> others = needed.stream()
                    .filter(other -> !other.equals(each))
                    .map(Case::condition)
                    .toList();
            if (!valid.some(each.condition(), new Condition.Not(Any.of(others)))) {
                needed.remove(each);
            }
        }
        return List.copyOf(needed);
    }
}
