package boltlore.proof.revision;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.logic.ValidOrders;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** What valid orders look like to someone who sees some of their options only. */
final class Projections {

    /** Projections of one set of options up to which they are enumerated. */
    static final int MOST = 200_000;

    private final Family family;
    private final ValidOrders valid;
    private final Map<SortedSet<OptionName>, Optional<List<Choices>>> known = new HashMap<>();

    Projections(Family family, ValidOrders valid) {
        this.family = family;
        this.valid = valid;
    }

    /** Each choice of these options that some valid order has; empty where there are more than {@link #MOST}. */
    Optional<List<Choices>> onto(SortedSet<OptionName> options) {
        return known.computeIfAbsent(options, wanted -> {
            List<Choices> found = new ArrayList<>();
            List<Option> all = family.options().stream()
                    .filter(option -> wanted.contains(option.name()))
                    .toList();
            return choose(all, new LinkedHashMap<>(), new ArrayList<>(), found) ? Optional.of(found) : Optional.empty();
        });
    }

    private boolean choose(
            List<Option> options, Map<OptionName, String> chosen, List<Condition> conditions, List<Choices> found) {
        if (chosen.size() == options.size()) {
            found.add(Choices.of(family, chosen));
            return found.size() <= MOST;
        }
        Option next = options.get(chosen.size());
        for (String value : next.valueNames()) {
            conditions.add(new Condition.Is(next.name(), new TreeSet<>(Set.of(value))));
            chosen.put(next.name(), value);
            boolean goOn = !valid.some(conditions) || choose(options, chosen, conditions, found);
            chosen.remove(next.name());
            conditions.remove(conditions.size() - 1);
            if (!goOn) {
                return false;
            }
        }
        return true;
    }
}
