package boltlore.logic;

import boltlore.choices.Choice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The values as the solver numbers them, to read and to steer it without building objects for every variable. */
final class ValueLiterals {

    private final SolverInternals.Search search;
    private final List<Choice> choices;
    private final Map<Choice, Integer> places = new HashMap<>();
    private final int[] literals;

    ValueLiterals(OptionLiterals options, SolverInternals.Search search) {
        this.search = search;
        this.choices = List.copyOf(options.all().keySet());
        this.literals =
                options.all().values().stream().mapToInt(Integer::intValue).toArray();
        choices.forEach(choice -> places.put(choice, places.size()));
    }

    /** The values of the order found last. */
    List<Choice> last() {
        List<Choice> shown = new ArrayList<>();
        for (int i = 0; i < literals.length; i++) {
            if (search.found(literals[i])) {
                shown.add(choices.get(i));
            }
        }
        return shown;
    }

    /** Values that cannot stand beside what is assumed, as far as that is plain without a search. */
    Set<Choice> excluded(List<Integer> assumed) {
        boolean[] refuted =
                search.refuted(assumed.stream().mapToInt(Integer::intValue).toArray(), literals);
        Set<Choice> excluded = new HashSet<>();
        for (int i = 0; i < literals.length; i++) {
            if (refuted[i]) {
                excluded.add(choices.get(i));
            }
        }
        return excluded;
    }

    /** All values but these, in the family's order. */
    List<Choice> allBut(Set<Choice> settled) {
        return choices.stream().filter(choice -> !settled.contains(choice)).toList();
    }

    /** Lets the search try these values first, in this order. */
    void tryFirst(List<Choice> values) {
        search.tryFirst(values.stream()
                .mapToInt(choice -> literals[places.getOrDefault(choice, 0)])
                .toArray());
    }

    void tryAny() {
        search.tryFirst();
    }
}
