package boltlore.checking;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.OptionName;
import boltlore.resolution.Resolver;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Whether two conditions of a family can hold in one order. Tries the values of the options that they name, which are
 * few; what they say of filled positions is taken as possible either way.
 */
final class Together {

    private final Family family;

    Together(Family family) {
        this.family = family;
    }

    boolean canHold(Condition left, Condition right) {
        Condition both = new Condition.All(List.of(left, right));
        SortedSet<OptionName> named = new TreeSet<>();
        name(both, named);
        List<Option> open = family.options().stream()
                .filter(option -> named.contains(option.name()))
                .toList();
        return canHold(both, open, new TreeMap<>());
    }

    private boolean canHold(Condition both, List<Option> open, Map<OptionName, String> chosen) {
        if (open.isEmpty()) {
            Choices choices = Choices.of(family, chosen);
            boolean holds = Conditions.holds(both, choices, position -> true)
                    || Conditions.holds(both, choices, position -> false);
            return holds && Resolver.brokenLimits(choices).isEmpty();
        }
        Option next = open.get(0);
        return next.valueNames().stream().anyMatch(value -> {
            Map<OptionName, String> more = new TreeMap<>(chosen);
            more.put(next.name(), value);
            return canHold(both, open.subList(1, open.size()), more);
        });
    }

    private static void name(Condition condition, SortedSet<OptionName> named) {
        if (condition instanceof Condition.Is is) {
            named.add(is.option());
        } else if (condition instanceof Condition.All all) {
            all.conditions().forEach(each -> name(each, named));
        } else if (condition instanceof Condition.AnyOf any) {
            any.conditions().forEach(each -> name(each, named));
        } else if (condition instanceof Condition.Not not) {
            name(not.condition(), named);
        }
    }
}
