package boltlore.logic;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A minimal conflict among requests, by divide and conquer (Junker, QUICKXPLAIN: preferred explanations and relaxations
 * for over-constrained problems, AAAI 2004). Requests are given most preferred first: the conflict found prefers to
 * consist of the earlier ones.
 */
public final class MinimalConflict<T> {

    private final Predicate<Collection<T>> consistent;

    private MinimalConflict(Predicate<Collection<T>> consistent) {
        this.consistent = consistent;
    }

    /**
     * A minimal conflict, in the order of the requests; empty where all of them are consistent together. It has no request
     * where nothing can be fulfilled at all.
     *
     * @param consistent whether these requests can be fulfilled together
     */
    public static <T> Optional<List<T>> find(List<T> requests, Predicate<Collection<T>> consistent) {
        if (consistent.test(requests)) {
            return Optional.empty();
        }
        if (requests.isEmpty() || !consistent.test(List.of())) {
            return Optional.of(List.of());
        }
        List<T> conflict = new MinimalConflict<>(consistent).among(List.of(), false, requests);
        return Optional.of(requests.stream().filter(conflict::contains).toList());
    }

    private List<T> among(List<T> background, boolean grown, List<T> requests) {
        if (grown && !consistent.test(background)) {
            return List.of();
        }
        if (requests.size() == 1) {
            return requests;
        }
        List<T> first = requests.subList(0, requests.size() / 2);
        List<T> second = requests.subList(requests.size() / 2, requests.size());
        List<T> ofSecond = among(joined(background, first), !first.isEmpty(), second);
        List<T> ofFirst = among(joined(background, ofSecond), !ofSecond.isEmpty(), first);
        return joined(ofFirst, ofSecond);
    }

    private static <T> List<T> joined(List<T> left, List<T> right) {
        List<T> all = new ArrayList<>(left);
        all.addAll(right);
        return all;
    }
}
