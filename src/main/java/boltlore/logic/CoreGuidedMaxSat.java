package boltlore.logic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Fulfils weighted wishes at the least weight of those that are given up, and proves it: wishes that cannot all be
 * fulfilled raise the lower bound, and from then on only further ones among them are counted (Morgado, Dodaro,
 * Marques-Silva: Core-guided MaxSAT with soft cardinality constraints, CP 2014; from memory). Heavy wishes come first.
 */
final class CoreGuidedMaxSat {

    /** A wish that no more than so many of the counted wishes are given up. */
    private record AtMost(Totalizer counter, int many) {}

    private static final long STEP = 4;

    /** Larger sets of wishes are taken as the solver gives them. */
    private static final int MOST_TO_SHRINK = 60;

    private final ValidOrders orders;
    private final List<Integer> given;
    private final Map<Integer, Long> weights;
    private final Map<Integer, AtMost> counting = new HashMap<>();
    private long paid;

    /** @param given literals that hold in any case; there is an order in which they do */
    CoreGuidedMaxSat(ValidOrders orders, List<Integer> given, Map<Integer, Long> weights) {
        this.orders = orders;
        this.given = given;
        this.weights = new LinkedHashMap<>(weights);
        long lightest = nextStep(Long.MAX_VALUE);
        while (lightest > 0) {
            fulfil(lightest);
            lightest = nextStep(lightest);
        }
    }

    /** The weight of all wishes that are given up: no order pays less. */
    long paid() {
        return paid;
    }

    /** What is given and what is still wished: exactly the cheapest orders fulfil all of it. */
    List<Integer> left() {
        return with(wishes(1));
    }

    /** Wishes within a factor of the heaviest that is left come together; 0 where none is left. */
    private long nextStep(long below) {
        long heaviest = weights.values().stream()
                .mapToLong(Long::longValue)
                .filter(weight -> weight < below)
                .max()
                .orElse(0);
        return (heaviest + STEP - 1) / STEP;
    }

    private void fulfil(long lightest) {
        while (!orders.someGiven(with(wishes(lightest)))) {
            giveUpOneOf(shrunk(conflict()));
        }
    }

    private List<Integer> wishes(long lightest) {
        return weights.entrySet().stream()
                .filter(wish -> wish.getValue() >= lightest)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private List<Integer> with(List<Integer> wishes) {
        List<Integer> all = new ArrayList<>(given);
        all.addAll(wishes);
        return all;
    }

    private List<Integer> conflict() {
        Set<Integer> refuted = orders.refuted();
        return refuted.stream()
                .filter(weights::containsKey)
                .filter(literal -> !given.contains(literal))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private List<Integer> shrunk(List<Integer> conflict) {
        List<Integer> needed = conflict;
        for (int wish : conflict.size() > MOST_TO_SHRINK ? List.<Integer>of() : conflict) {
            List<Integer> fewer = new ArrayList<>(needed);
            if (fewer.remove((Integer) wish) && !orders.someGiven(with(fewer))) {
                needed = conflict();
            }
        }
        return needed;
    }

    private void giveUpOneOf(List<Integer> wishes) {
        long least = wishes.stream()
                .mapToLong(wish -> weights.getOrDefault(wish, 0L))
                .min()
                .orElseThrow(() -> new IllegalStateException("What is given cannot be fulfilled"));
        paid += least;
        wishes.forEach(wish -> lighten(wish, least));
        if (wishes.size() > 1) {
            List<Integer> givenUp = wishes.stream().map(SolverInternals::not).toList();
            wishAtMost(new Totalizer(givenUp, orders.search(), orders.deadline()), 1, least);
        }
    }

    private void lighten(Integer wish, long least) {
        weights.computeIfPresent(wish, (same, weight) -> weight == least ? null : weight - least);
        AtMost counted = counting.get(wish);
        if (counted != null) {
            wishAtMost(counted.counter(), counted.many() + 1, least);
        }
    }

    private void wishAtMost(Totalizer counter, int many, long weight) {
        if (many < counter.size()) {
            Integer wish = SolverInternals.not(counter.moreThan(many));
            counting.put(wish, new AtMost(counter, many));
            weights.merge(wish, weight, Long::sum);
        }
    }
}
