package boltlore.choices;

import boltlore.catalogue.Condition;
import boltlore.measure.PositionName;
import java.util.List;
import java.util.function.Predicate;

/** What a condition comes to once options are settled. */
public final class Conditions {

    private static final Condition NEVER = new Condition.AnyOf(List.of());

    private Conditions() {}

    /** Whether the condition holds for a complete choice, when a position is filled as told. */
    public static boolean holds(Condition condition, Choices choices, Predicate<PositionName> filled) {
        if (condition instanceof Condition.Is is) {
            return is.values().contains(choices.value(is.option()).orElse(""));
        }
        if (condition instanceof Condition.All all) {
            return all.conditions().stream().allMatch(each -> holds(each, choices, filled));
        }
        if (condition instanceof Condition.AnyOf any) {
            return any.conditions().stream().anyMatch(each -> holds(each, choices, filled));
        }
        if (condition instanceof Condition.Not not) {
            return !holds(not.condition(), choices, filled);
        }
        return filled.test(((Condition.Filled) condition).position());
    }

    /** Whether a condition over options alone holds already, whatever else is chosen; exact for each option by itself. */
    public static boolean certain(Condition condition, Choices choices) {
        return Verdict.of(condition, choices) == Verdict.HOLDS;
    }

    /** Whether a condition over options alone holds. */
    public static boolean holds(Condition condition, Choices choices) {
        return holds(condition, choices, position -> {
            throw new IllegalArgumentException("'filled' stands in a condition over options: " + position);
        });
    }

    /**
     * What is left of a condition when the options of a complete choice are put in: always, never, or a condition over
     * filled positions alone.
     */
    public static Condition afterChoices(Condition condition, Choices choices) {
        if (condition instanceof Condition.Is is) {
            return constant(is.values().contains(choices.value(is.option()).orElse("")));
        }
        if (condition instanceof Condition.All all) {
            return all(all.conditions(), choices);
        }
        if (condition instanceof Condition.AnyOf any) {
            return any(any.conditions(), choices);
        }
        return condition instanceof Condition.Not not ? not(afterChoices(not.condition(), choices)) : condition;
    }

    public static boolean isNever(Condition condition) {
        return condition instanceof Condition.AnyOf any && any.conditions().isEmpty();
    }

    private static Condition constant(boolean holds) {
        return holds ? Condition.ALWAYS : NEVER;
    }

    private static Condition not(Condition rest) {
        if (rest.isAlways()) {
            return NEVER;
        }
        return isNever(rest) ? Condition.ALWAYS : new Condition.Not(rest);
    }

    private static Condition all(List<Condition> conditions, Choices choices) {
        List<Condition> rest = conditions.stream()
                .map(each -> afterChoices(each, choices))
                .filter(after -> !after.isAlways())
                .toList();
        if (rest.stream().anyMatch(Conditions::isNever)) {
            return NEVER;
        }
        return rest.size() == 1 ? rest.get(0) : new Condition.All(rest);
    }

    private static Condition any(List<Condition> conditions, Choices choices) {
        List<Condition> rest = conditions.stream()
                .map(each -> afterChoices(each, choices))
                .filter(after -> !isNever(after))
                .toList();
        if (rest.stream().anyMatch(Condition::isAlways)) {
            return Condition.ALWAYS;
        }
        return rest.size() == 1 ? rest.get(0) : new Condition.AnyOf(rest);
    }
}
