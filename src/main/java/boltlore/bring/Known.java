package boltlore.bring;

import java.util.List;
import java.util.Set;

/**
 * What a list is brought into.
 *
 * @param isNew whether there is no workshop yet, so that a small one is written too
 * @param currency of the workshop, or empty
 * @param parts numbers that are taken
 * @param families names that are taken
 * @param defaults keys of parts for which the workshop has a default, so that nobody need be asked
 */
public record Known(
        boolean isNew,
        String currency,
        List<String> stages,
        List<String> subSystems,
        Set<String> suppliers,
        Set<String> parts,
        Set<String> families,
        Set<String> defaults) {

    /** Nothing is there yet. */
    public static final Known NOTHING =
            new Known(true, "", List.of(), List.of(), Set.of(), Set.of(), Set.of(), Set.of());
}
