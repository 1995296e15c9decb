package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.choices.Choice;
import boltlore.logic.Deadline;
import boltlore.logic.MusMcsEnumeration;
import java.util.Comparator;
import java.util.List;

/**
 * All minimal conflicts, those of fewest choices first.
 *
 * @param complete false where there are more than were looked for
 */
public record AllConflicts(List<Conflict> conflicts, boolean complete) {

    private static final int MOST = 1000;

    static AllConflicts of(Chooser chooser, List<Choice> requests, List<Condition> wanted, Deadline deadline) {
        MusMcsEnumeration<Choice> sets =
                MusMcsEnumeration.of(requests, some -> Requests.fulfillable(chooser, some, wanted), MOST, deadline);
        List<Conflict> told = sets.conflicts().stream()
                .map(conflict -> chooser.told(conflict, wanted))
                .sorted(Comparator.<Conflict>comparingInt(
                                conflict -> conflict.choices().size())
                        .thenComparing(conflict -> conflict.choices().toString()))
                .toList();
        return new AllConflicts(told, sets.complete());
    }
}
