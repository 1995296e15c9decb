package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * An order of options in which those that conditions mention together stand near each other: each option moves to the
 * centre of the conditions it stands in until nothing moves any more (the FORCE heuristic, Aloul, Markov and Sakallah,
 * GLSVLSI 2003; from memory). Options that no chain of conditions ties together stand apart: their diagrams then add up
 * and do not multiply.
 */
final class OptionOrder {

    private static final int ROUNDS = 50;

    private OptionOrder() {}

    static List<OptionName> arrange(Family family, Collection<Condition> conditions, Deadline deadline) {
        List<OptionName> names = family.options().stream().map(Option::name).toList();
        Map<OptionName, Integer> numbers = new HashMap<>();
        names.forEach(name -> numbers.put(name, numbers.size()));
        int[][] groups = conditions.stream()
                .map(condition -> Mentions.find(condition).stream()
                        .mapToInt(name -> numbers.getOrDefault(name, 0))
                        .toArray())
                .filter(group -> group.length > 0)
                .toArray(int[][]::new);
        int[] order = IntStream.range(0, names.size()).toArray();
        for (int round = 0; round < ROUNDS; round++) {
            deadline.check();
            int[] next = moved(order, groups);
            if (Arrays.equals(next, order)) {
                break;
            }
            order = next;
        }
        return apart(order, groups).stream().map(names::get).toList();
    }

    private static List<Integer> apart(int[] order, int[][] groups) {
        int[] above = IntStream.range(0, order.length).toArray();
        for (int[] group : groups) {
            for (int option : group) {
                above[top(option, above)] = top(group[0], above);
            }
        }
        Map<Integer, List<Integer>> tied = new LinkedHashMap<>();
        for (int option : order) {
            tied.computeIfAbsent(top(option, above), first -> new ArrayList<>()).add(option);
        }
        return tied.values().stream().flatMap(List::stream).toList();
    }

    private static int top(int option, int[] above) {
        int at = option;
        while (above[at] != at) {
            above[at] = above[above[at]];
            at = above[at];
        }
        return at;
    }

    private static int[] moved(int[] order, int[][] groups) {
        int[] places = new int[order.length];
        for (int place = 0; place < order.length; place++) {
            places[order[place]] = place;
        }
        double[] sums = new double[order.length];
        int[] counts = new int[order.length];
        for (int[] group : groups) {
            double centre =
                    Arrays.stream(group).map(option -> places[option]).average().orElse(0);
            for (int option : group) {
                sums[option] += centre;
                counts[option]++;
            }
        }
        return Arrays.stream(order)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(
                                option -> counts[option] > 0 ? sums[option] / counts[option] : places[option])
                        .thenComparing(option -> places[option]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
