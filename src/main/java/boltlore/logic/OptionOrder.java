package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * An order of options in which those that conditions mention together stand near each other: each option moves to the
 * centre of the conditions it stands in until nothing moves any more (the FORCE heuristic, Aloul, Markov and Sakallah,
 * GLSVLSI 2003; from memory). Options that no chain of conditions ties together stand apart: their diagrams then add up
 * and do not multiply.
 */
final class OptionOrder {

    private static final int ROUNDS = 50;

    private OptionOrder() {}

    static List<OptionName> arrange(Family family, Collection<Condition> conditions) {
        List<OptionName> order =
                new ArrayList<>(family.options().stream().map(Option::name).toList());
        List<Set<OptionName>> groups = new ArrayList<>();
        conditions.stream()
                .<Set<OptionName>>map(Mentions::find)
                .filter(group -> !group.isEmpty())
                .forEach(groups::add);
        for (int round = 0; round < ROUNDS; round++) {
            List<OptionName> next = moved(order, groups);
            if (next.equals(order)) {
                break;
            }
            order = next;
        }
        return apart(order, groups);
    }

    private static List<OptionName> apart(List<OptionName> order, List<Set<OptionName>> groups) {
        Map<OptionName, OptionName> above = new HashMap<>();
        groups.forEach(group -> {
            OptionName first = group.iterator().next();
            group.forEach(option -> above.put(top(option, above), top(first, above)));
        });
        Map<OptionName, List<OptionName>> tied = new LinkedHashMap<>();
        order.forEach(option -> tied.computeIfAbsent(top(option, above), first -> new ArrayList<>())
                .add(option));
        return tied.values().stream().flatMap(List::stream).toList();
    }

    private static OptionName top(OptionName option, Map<OptionName, OptionName> above) {
        OptionName at = option;
        OptionName next = above.get(at);
        while (next != null && !next.equals(at)) {
            at = next;
            next = above.get(at);
        }
        return at;
    }

    private static List<OptionName> moved(List<OptionName> order, List<Set<OptionName>> groups) {
        Map<OptionName, Integer> place = new HashMap<>();
        for (OptionName option : order) {
            place.put(option, place.size());
        }
        Map<OptionName, Double> sums = new HashMap<>();
        Map<OptionName, Integer> counts = new HashMap<>();
        for (Set<OptionName> group : groups) {
            double centre = group.stream()
                    .mapToInt(option -> place.getOrDefault(option, 0))
                    .average()
                    .orElse(0);
            for (OptionName option : group) {
                sums.merge(option, centre, Double::sum);
                counts.merge(option, 1, Integer::sum);
            }
        }
        return order.stream()
                .sorted(Comparator.<OptionName>comparingDouble(option -> counts.containsKey(option)
                                ? sums.getOrDefault(option, 0.0) / counts.getOrDefault(option, 1)
                                : place.getOrDefault(option, 0))
                        .thenComparing(option -> place.getOrDefault(option, 0)))
                .toList();
    }
}
