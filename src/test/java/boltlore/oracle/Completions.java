package boltlore.oracle;

import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import java.util.List;
import java.util.function.Predicate;

/** All valid complete choices that keep a partial one, by plain enumeration, in the order of options and values. */
public final class Completions {

    private Completions() {}

    /**
     * Visits completions until the visitor says it has seen enough.
     *
     * @param visitor true to go on
     * @return false when the visitor stopped the enumeration
     */
    public static boolean visit(Choices partial, Predicate<Choices> visitor) {
        Family family = partial.family();
        for (Limit limit : family.limits()) {
            if (Conditions.certain(limit.forbids(), partial)) {
                return true;
            }
        }
        List<Option> open = partial.unsettled();
        if (open.isEmpty()) {
            return visitor.test(partial);
        }
        Option next = open.get(0);
        for (OptionValue value : next.values()) {
            if (!visit(partial.with(next.name(), value.value()), visitor)) {
                return false;
            }
        }
        return true;
    }
}
