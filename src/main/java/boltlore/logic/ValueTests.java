package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.measure.OptionName;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The sets of values that conditions ask about: two values that are in the same ones are told apart by none of them. */
final class ValueTests {

    private final Map<OptionName, Map<String, Set<Set<String>>>> passed = new HashMap<>();

    ValueTests(Collection<Condition> conditions) {
        conditions.forEach(this::add);
    }

    /** The sets that the value is in. */
    Set<Set<String>> passedBy(OptionName option, String value) {
        return passed.getOrDefault(option, Map.of()).getOrDefault(value, Set.of());
    }

    private void add(Condition condition) {
        if (condition instanceof Condition.Is is) {
            Map<String, Set<Set<String>>> byValue = passed.computeIfAbsent(is.option(), option -> new HashMap<>());
            is.values()
                    .forEach(value -> byValue.computeIfAbsent(value, name -> new HashSet<>())
                            .add(is.values()));
        }
        condition.parts().forEach(this::add);
    }
}
