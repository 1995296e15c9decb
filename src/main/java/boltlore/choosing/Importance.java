package boltlore.choosing;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import boltlore.order.Order;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How much each choice means to the customer: firm ones most, then those with a rank in its order, then the rest in the
 * family's order of options.
 *
 * @param firm choices that no repair may touch
 */
public record Importance(Set<OptionName> firm, List<OptionName> rank) {

    public static final Importance NONE = new Importance(Set.of(), List.of());

    public static Importance of(Order order) {
        return new Importance(order.firm(), order.rank());
    }

    public boolean isFirm(Choice choice) {
        return firm.contains(choice.option());
    }

    /** The same, where of the options that are neither fixed nor have a rank these mean most, the first of them first. */
    public Importance thenNewest(List<OptionName> newest) {
        List<OptionName> all = new ArrayList<>(rank);
        newest.stream()
                .filter(option -> !all.contains(option) && !firm.contains(option))
                .forEach(all::add);
        return new Importance(firm, all);
    }

    /** How high the one stands that means most of these: 0 for the first of the rank; below all ranks where none has one. */
    int place(Collection<Choice> choices) {
        return choices.stream()
                .mapToInt(choice -> rank.indexOf(choice.option()))
                .map(place -> place < 0 ? Integer.MAX_VALUE : place)
                .min()
                .orElse(Integer.MAX_VALUE);
    }

    /** The choices, those that mean least first. */
    List<Choice> leastFirst(Family family, Collection<Choice> choices) {
        Set<OptionName> order = new LinkedHashSet<>();
        family.options().stream().map(Option::name).filter(firm::contains).forEach(order::add);
        order.addAll(rank);
        family.options().stream().map(Option::name).forEach(order::add);
        Map<OptionName, Integer> places = new HashMap<>();
        order.forEach(option -> places.put(option, places.size()));
        List<Choice> sorted = new ArrayList<>(choices);
        sorted.sort(Comparator.comparingInt(choice -> -places.getOrDefault(choice.option(), 0)));
        return sorted;
    }
}
