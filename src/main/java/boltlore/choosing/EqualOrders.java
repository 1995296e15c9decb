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
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Orders that are equally good: which of them stands for all, and how the others differ. */
final class EqualOrders {

    private final LeastOrders best;
    private final List<Choice> rather;
    private final List<Condition> taken = new ArrayList<>();
    private Choices order;

    private EqualOrders(Family family, LeastOrders best) {
        this.best = best;
        this.rather = family.options().stream()
                .flatMap(option -> usualFirst(option).stream().map(value -> new Choice(option.name(), value)))
                .toList();
        this.order = best.one(taken, rather).orElseThrow();
        family.options().forEach(this::take);
    }

    /** The one with the usual values, then the first ones. */
    static Choices preferred(Family family, LeastOrders best) {
        return new EqualOrders(family, best).order;
    }

    /** Takes the first value of the option that stands beside what is taken: the one that the order has, at the latest. */
    private void take(Option option) {
        String own = order.value(option.name()).orElseThrow();
        for (String value : usualFirst(option)) {
            if (value.equals(own) || found(new Choice(option.name(), value))) {
                taken.add(Wanted.of(new Choice(option.name(), value)));
                return;
            }
        }
    }

    private boolean found(Choice value) {
        List<Condition> all = new ArrayList<>(taken);
        all.add(Wanted.of(value));
        Optional<Choices> better = best.one(all, rather);
        order = better.orElse(order);
        return better.isPresent();
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
