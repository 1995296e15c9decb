package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.logic.MinimalConflict;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Choices as requests that may be given up, against limits and wishes that may not. */
final class Requests {

    /** Of more requests only those are tried that a first refutation rests on. */
    private static final int MOST_TRIED = 100;

    private Requests() {}

    /**
     * A minimal conflict, preferably among the first of the requests where these are not very many; they must not be
     * fulfillable together.
     */
    static List<Choice> conflict(Chooser chooser, List<Choice> requests, List<Condition> wanted) {
        return MinimalConflict.find(few(chooser, requests, wanted), some -> fulfillable(chooser, some, wanted))
                .orElseThrow(() -> new IllegalArgumentException("Nothing stands against " + wanted));
    }

    private static List<Choice> few(Chooser chooser, List<Choice> requests, List<Condition> wanted) {
        if (requests.size() <= MOST_TRIED || fulfillable(chooser, requests, wanted)) {
            return requests;
        }
        Set<Condition> against = Set.copyOf(chooser.orders().against(chooser.conditions(requests)));
        return requests.stream()
                .filter(request -> against.contains(chooser.condition(request)))
                .toList();
    }

    static boolean fulfillable(Chooser chooser, Collection<Choice> requests, List<Condition> wanted) {
        List<Condition> all = new ArrayList<>(wanted);
        all.addAll(chooser.conditions(requests));
        return chooser.orders().some(all);
    }
}
