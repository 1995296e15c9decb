package boltlore.proof.kinds;

import boltlore.catalogue.Condition;
import boltlore.measure.OptionName;
import java.util.Set;
import java.util.TreeSet;

/** That an option has a value, as a condition. */
final class Value {

    private Value() {}

    static Condition is(OptionName option, String value) {
        return new Condition.Is(option, new TreeSet<>(Set.of(value)));
    }
}
