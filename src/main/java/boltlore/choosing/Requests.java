package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.logic.MinimalConflict;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Choices as requests that may be given up, against limits and wishes that may not. */
final class Requests {

    private Requests() {}

    /** A minimal conflict, preferably among the first of the requests; they must not be fulfillable together. */
    static List<Choice> conflict(Chooser chooser, List<Choice> requests, List<Condition> wanted) {
        return MinimalConflict.of(requests, some -> fulfillable(chooser, some, wanted))
                .orElseThrow(() -> new IllegalArgumentException("Nothing stands against " + wanted));
    }

    static boolean fulfillable(Chooser chooser, Collection<Choice> requests, List<Condition> wanted) {
        List<Condition> all = new ArrayList<>(wanted);
        all.addAll(chooser.conditions(requests));
        return chooser.orders().some(all);
    }
}
