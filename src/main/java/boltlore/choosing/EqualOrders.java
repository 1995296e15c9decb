package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.LeastOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Orders that are equally good: which of them stands for all, and how the others differ. */
final class EqualOrders {

    private EqualOrders() {}

    /** The one with the usual values, then the first ones. */
    static Choices preferred(Family family, LeastOrders best) {
        List<Condition> taken = new ArrayList<>();
        for (Option option : family.options()) {
            usualFirst(option).stream()
                    .map(value -> Wanted.of(new Choice(option.name(), value)))
                    .filter(value -> best.one(with(taken, value)).isPresent())
                    .findFirst()
                    .ifPresent(taken::add);
        }
        return best.one(taken).orElseThrow();
    }

    private static List<Condition> with(List<Condition> taken, Condition value) {
        List<Condition> all = new ArrayList<>(taken);
        all.add(value);
        return all;
    }

    private static List<String> usualFirst(Option option) {
        List<String> values = new ArrayList<>(option.valueNames());
        String usual = option.usual();
        if (usual != null) {
            values.remove(usual);
            values.add(0, usual);
        }
        return values;
    }

    /** Values of the others by option, where they differ from this one. */
    static SortedMap<OptionName, List<OptionValue>> others(Choices order, Set<Choice> values) {
        SortedMap<OptionName, List<OptionValue>> others = new TreeMap<>();
        Set<Choice> own = Set.copyOf(Chooser.list(order));
        for (Option option : order.family().options()) {
            List<OptionValue> differing = option.values().stream()
                    .filter(value -> values.contains(new Choice(option.name(), value.value())))
                    .filter(value -> !own.contains(new Choice(option.name(), value.value())))
                    .toList();
            others.put(option.name(), differing);
        }
        others.values().removeIf(List::isEmpty);
        return others;
    }
}
