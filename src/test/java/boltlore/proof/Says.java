package boltlore.proof;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Need;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Conditions in a few words. */
final class Says {

    private Says() {}

    static Condition is(String option, String... values) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(Set.of(values)));
    }

    static Condition all(Condition... conditions) {
        return new Condition.All(List.of(conditions));
    }

    static Condition any(Condition... conditions) {
        return new Condition.AnyOf(List.of(conditions));
    }

    static Condition not(Condition condition) {
        return new Condition.Not(condition);
    }

    static Condition filled(String position) {
        return new Condition.Filled(new PositionName(position));
    }

    static Need needs(String part, String each) {
        return new Need(new PartNumber(part), new Need.Each(new BigDecimal(each)), Condition.ALWAYS, "It needs it.");
    }

    static Expectation expects(String part, String atLeast, Condition when) {
        return new Expectation(
                new Expectation.OfPart(new PartNumber(part)), new BigDecimal(atLeast), when, "It expects it.");
    }
}
