package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * A family without the values that are closed: the valid orders that keep what closed them, in fewer words. Options and
 * limits only; what decides a kit is left out.
 */
public final class RestrictedFamily {

    private final Family family;
    private final Map<OptionName, SortedSet<String>> open = new HashMap<>();
    private final BottomUp<Condition, Condition> known =
            new BottomUp<>(new IdentityHashMap<>(), Condition::parts, this::narrow);

    /** @param isOpen whether a value stands in some order; each option has such a value */
    public RestrictedFamily(Family whole, Predicate<Choice> isOpen) {
        List<Option> options =
                whole.options().stream().map(option -> narrowed(option, isOpen)).toList();
        options.forEach(option -> open.put(option.name(), new TreeSet<>(option.valueNames())));
        this.family = whole.choosing(options, narrowed(whole.limits()));
    }

    private List<Limit> narrowed(List<Limit> limits) {
        return limits.stream()
                .map(limit -> new Limit(limit.name(), limit.because(), null, of(limit.forbids()), null))
                .filter(limit -> !limit.when().equals(Any.NEVER))
                .toList();
    }

    private static Option narrowed(Option option, Predicate<Choice> isOpen) {
        List<OptionValue> left = option.values().stream()
                .filter(value -> isOpen.test(new Choice(option.name(), value.value())))
                .toList();
        return option.offering(left, null);
    }

    public Family family() {
        return family;
    }

    /** The same condition where only open values are left. */
    public Condition of(Condition condition) {
        return known.of(condition);
    }

    private Condition narrow(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return is(is);
        }
        if (condition instanceof Condition.Not not) {
            return Any.but(of(not.condition()));
        }
        if (condition instanceof Condition.All all) {
            return All.of(all.conditions().stream().map(this::of).toList());
        }
        if (condition instanceof Condition.AnyOf any) {
            return Any.of(any.conditions().stream().map(this::of).toList());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }

    private Condition is(Condition.Is is) {
        SortedSet<String> all = open.getOrDefault(is.option(), new TreeSet<>());
        SortedSet<String> left = new TreeSet<>(is.values());
        left.retainAll(all);
        if (left.isEmpty()) {
            return Any.NEVER;
        }
        return left.equals(all) ? Condition.ALWAYS : new Condition.Is(is.option(), left);
    }
}
