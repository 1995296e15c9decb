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
public record MusMcsEnumeration<T>(List<List<T>> conflicts, List<List<T>> repairs, boolean complete) {

    /**
     * Enumerates them; sets are in the order of the requests.
     *
     * @param consistent whether these requests can be fulfilled together
     * @param most how many sets to find at most, conflicts and repairs together
     */
    public static <T> MusMcsEnumeration<T> of(
            List<T> requests, Predicate<Collection<T>> consistent, int most, Deadline deadline) {
        MarcoMap<T> unknown = new MarcoMap<>(requests);
        MusMcsEnumeration<T> found = new MusMcsEnumeration<>(new ArrayList<>(), new ArrayList<>(), false);
        Optional<List<T>> seed = unknown.next();
        while (seed.isPresent() && found.conflicts.size() + found.repairs.size() < most) {
            deadline.check();
            found.add(seed.get(), requests, consistent, unknown);
            seed = unknown.next();
        }
        return new MusMcsEnumeration<>(List.copyOf(found.conflicts), List.copyOf(found.repairs), seed.isEmpty());
    }

    private void add(List<T> seed, List<T> requests, Predicate<Collection<T>> consistent, MarcoMap<T> unknown) {
        Optional<List<T>> conflict = MinimalConflict.find(seed, consistent);
        if (conflict.isPresent()) {
            conflicts.add(conflict.get());
            unknown.withoutOneOf(conflict.get());
        } else {
            List<T> given = givenUp(requests, seed, consistent);
            repairs.add(given);
            unknown.withOneOf(given);
        }
    }

    private static <T> List<T> givenUp(List<T> requests, List<T> kept, Predicate<Collection<T>> consistent) {
        List<T> all = new ArrayList<>(kept);
        for (T request : requests) {
            if (!kept.contains(request)) {
                all.add(request);
                if (!consistent.test(all)) {
                    all.remove(all.size() - 1);
                }
            }
        }
        return requests.stream().filter(request -> !all.contains(request)).toList();
    }
}
