package boltlore.trial;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Need;
import boltlore.catalogue.OptionValue;
import boltlore.measure.LineName;
import boltlore.measure.OptionName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Conditions, needs and expectations in short words. */
public final class Say {

    private Say() {}

    public static Condition is(String option, String... values) {
        return new Condition.Is(new OptionName(option), new TreeSet<>(List.of(values)));
    }

    public static Condition all(Condition... conditions) {
        return new Condition.All(List.of(conditions));
    }

    public static Condition any(Condition... conditions) {
        return new Condition.AnyOf(List.of(conditions));
    }

    public static Condition not(Condition condition) {
        return new Condition.Not(condition);
    }

    public static Condition filled(String position) {
        return new Condition.Filled(new PositionName(position));
    }

    public static Need each(String part, String quantity) {
        return each(part, quantity, Condition.ALWAYS);
    }

    public static Need each(String part, String quantity, Condition when) {
        return new Need(new PartNumber(part), new Need.Each(new BigDecimal(quantity)), when, "It is needed.");
    }

    public static Need joint(String joint, String part, String atLeast) {
        return joint(joint, part, atLeast, Condition.ALWAYS);
    }

    public static Need joint(String joint, String part, String atLeast, Condition when) {
        return new Need(
                new PartNumber(part), new Need.AtJoint(joint, new BigDecimal(atLeast)), when, "The joint is shared.");
    }

    public static Expectation expectPart(String part, String atLeast, Condition when) {
        return new Expectation(
                new Expectation.OfPart(new PartNumber(part)), new BigDecimal(atLeast), when, "It is expected.");
    }

    public static Expectation expectPosition(String position, String atLeast, Condition when) {
        return new Expectation(
                new Expectation.OfPosition(new PositionName(position)),
                new BigDecimal(atLeast),
                when,
                "It is expected.");
    }

    public static OptionValue value(String value) {
        return value(value, Facts.NONE);
    }

    public static OptionValue value(String value, Facts facts) {
        return new OptionValue(value, Wording.english("Value " + value), facts);
    }

    public static List<LineName> lines(String... names) {
        return Stream.of(names).map(LineName::new).toList();
    }
}
