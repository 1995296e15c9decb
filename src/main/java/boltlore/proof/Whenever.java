package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Mentions;
import boltlore.logic.MinimalConflict;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What it is about an order that makes it fulfil a condition. */
final class Whenever {

    private Whenever() {}

    /**
     * Choices of the order that alone make every valid order which has them fulfil the condition; none of them can be
     * dropped. Those that the condition speaks of are preferred.
     */
    static Cause test(Choices order, Condition condition, ValidOrders valid) {
        Condition otherwise = new Condition.Not(condition);
        Set<OptionName> spokenOf = Mentions.find(condition);
        List<Choice> requests = new ArrayList<>();
        order.values().forEach((option, value) -> requests.add(new Choice(option, value)));
        requests.sort(Comparator.comparing(choice -> !spokenOf.contains(choice.option())));
        List<Choice> choices = MinimalConflict.find(requests, some -> valid.some(with(some, otherwise)))
                .orElseThrow(() -> new IllegalStateException("The order does not fulfil the condition: " + order));
        boolean onlyThen =
                !valid.some(new Condition.Not(new Condition.All(with(choices, Condition.ALWAYS))), condition);
        return new Cause(choices, onlyThen);
    }

    private static List<Condition> with(Collection<Choice> choices, Condition otherwise) {
        List<Condition> all = new ArrayList<>();
        choices.forEach(choice -> all.add(new Condition.Is(choice.option(), new TreeSet<>(Set.of(choice.value())))));
        all.add(otherwise);
        return all;
    }
}
