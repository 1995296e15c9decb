package boltlore.logic;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All minimal conflicts among requests, and all minimal repairs: sets of requests to give up so that the rest can be
 * fulfilled. A solver keeps the map of which sets are still unknown (Liffiton, Previti, Malik, Marques-Silva: Fast,
 * flexible MUS enumeration, Constraints 21, 2016; from memory).
 *
 * @param complete false where the search ended at its limit: then there may be more
 */
public record MinimalSets<T>(List<List<T>> conflicts, List<List<T>> repairs, boolean complete) {

    /**
     * Enumerates them; sets are in the order of the requests.
     *
     * @param consistent whether these requests can be fulfilled together
     * @param most how many sets to find at most, conflicts and repairs together
     */
    public static <T> MinimalSets<T> of(
            List<T> requests, Predicate<Collection<T>> consistent, int most, Deadline deadline) {
        UnknownSets<T> unknown = new UnknownSets<>(requests);
        List<List<T>> conflicts = new ArrayList<>();
        List<List<T>> repairs = new ArrayList<>();
        Optional<List<T>> seed = unknown.next();
        while (seed.isPresent() && conflicts.size() + repairs.size() < most) {
            deadline.check();
            Optional<List<T>> conflict = MinimalConflict.of(seed.get(), consistent);
            if (conflict.isPresent()) {
                conflicts.add(conflict.get());
                unknown.withoutOneOf(conflict.get());
            } else {
                List<T> given = givenUp(requests, seed.get(), consistent);
                repairs.add(given);
                unknown.withOneOf(given);
            }
            seed = unknown.next();
        }
        return new MinimalSets<>(List.copyOf(conflicts), List.copyOf(repairs), seed.isEmpty());
    }

    private static <T> List<T> givenUp(List<T> requests, List<T> kept, Predicate<Collection<T>> consistent) {
        List<T> all = new ArrayList<>(kept);
        List<T> given = new ArrayList<>();
        for (T request : requests) {
            if (!kept.contains(request)) {
                all.add(request);
                if (!consistent.test(all)) {
                    all.remove(all.size() - 1);
                    given.add(request);
                }
            }
        }
        return given;
    }
}
