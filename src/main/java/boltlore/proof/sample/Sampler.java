package boltlore.proof.sample;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.logic.Deadline;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Finds covering samples: begins each order with a combination that none has yet, then gives each further option the
 * value that brings the most new combinations and still leaves a valid order (after Johansen, Haugen and Fleurey, An
 * algorithm for generating t-wise covering arrays from large feature models, SPLC 2012; from memory).
 */
public final class Sampler {

    /** Options up to which combinations of three are looked at. */
    public static final int MOST_OPTIONS_FOR_THREES = 20;

    private static final long MOST_COMBINATIONS = 50_000_000;

    private final Family family;
    private final ValidOrders valid;
    private final Combinations combinations;
    private final BitSet open = new BitSet();
    private final List<int[]> orders = new ArrayList<>();
    private final List<int[]> uncoverable = new ArrayList<>();
    private final List<List<Condition>> values = new ArrayList<>();

    private Sampler(Family family, int ways, Deadline deadline) {
        this.family = family;
        this.valid = new ValidOrders(family, family.limits(), deadline);
        this.combinations = new Combinations(family, ways, MOST_COMBINATIONS);
        open.set(0, combinations.count());
        for (Option option : family.options()) {
            values.add(option.valueNames().stream()
                    .<Condition>map(value -> new Condition.Is(option.name(), new TreeSet<>(Set.of(value))))
                    .toList());
        }
    }

    /**
     * A covering sample; empty where there are too many combinations.
     *
     * @param ways 2 or 3 values at a time; 3 for {@value #MOST_OPTIONS_FOR_THREES} options at most
     */
    public static Optional<CoveringSample> draw(Family family, int ways, Deadline deadline) {
        if (ways == 3 && family.options().size() > MOST_OPTIONS_FOR_THREES) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Sampler(family, ways, deadline).sample());
        } catch (IllegalArgumentException tooMany) {
            return Optional.empty();
        }
    }

    private CoveringSample sample() {
        boolean complete = true;
        try {
            for (int next = open.nextSetBit(0); next >= 0; next = open.nextSetBit(next)) {
                cover(combinations.at(next), next);
            }
        } catch (Deadline.Passed e) {
            complete = false;
        }
        List<int[]> needed = Spared.without(orders, combinations);
        return new CoveringSample(
                needed.stream().map(this::choices).toList(),
                combinations.count() - (long) uncoverable.size() - open.cardinality(),
                uncoverable.stream().map(this::choicesOf).toList(),
                complete);
    }

    private void cover(int[] combination, int number) {
        if (!isValid(combination)) {
            open.clear(number);
            uncoverable.add(combination);
            return;
        }
        int[] order = combination.clone();
        for (int option : optionsByNeed(order)) {
            give(order, option);
        }
        orders.add(order);
        combinations.of(order, open::clear);
    }

    /** Options that still have many open combinations come first. */
    private List<Integer> optionsByNeed(int[] order) {
        return IntStream.range(0, order.length)
                .filter(option -> order[option] < 0)
                .boxed()
                .sorted(Comparator.comparingInt(option -> -bestGain(order, option)))
                .toList();
    }

    private int bestGain(int[] order, int option) {
        return IntStream.range(0, values.get(option).size())
                .map(value -> gain(order, option, value))
                .max()
                .orElse(0);
    }

    private int gain(int[] order, int option, int value) {
        int[] gained = new int[1];
        order[option] = value;
        combinations.with(option, order, number -> gained[0] += open.get(number) ? 1 : 0);
        order[option] = -1;
        return gained[0];
    }

    private void give(int[] order, int option) {
        List<Integer> best = IntStream.range(0, values.get(option).size())
                .boxed()
                .sorted(Comparator.comparingInt(value -> -gain(order, option, value)))
                .toList();
        for (int value : best) {
            order[option] = value;
            if (isValid(order)) {
                return;
            }
        }
        throw new IllegalStateException("A valid beginning of an order has no end: " + choicesOf(order));
    }

    private boolean isValid(int[] order) {
        List<Condition> chosen = new ArrayList<>();
        for (int option = 0; option < order.length; option++) {
            if (order[option] >= 0) {
                chosen.add(values.get(option).get(order[option]));
            }
        }
        return valid.some(chosen);
    }

    private Choices choices(int[] order) {
        Map<OptionName, String> chosen = new LinkedHashMap<>();
        choicesOf(order).forEach(choice -> chosen.put(choice.option(), choice.value()));
        return Choices.of(family, chosen);
    }

    private List<Choice> choicesOf(int[] order) {
        List<Choice> chosen = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
            if (order[i] >= 0) {
                Option option = family.options().get(i);
                chosen.add(new Choice(option.name(), option.valueNames().get(order[i])));
            }
        }
        return chosen;
    }
}
