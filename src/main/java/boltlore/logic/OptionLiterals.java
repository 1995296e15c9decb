package boltlore.logic;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;

/**
 * A variable for each option value, true when it is chosen; an option with two values has one variable for the first,
 * and its negation is the second.
 */
final class OptionLiterals {

    private final Map<Choice, Integer> literals = new LinkedHashMap<>();

    /** @param fresh makes a variable that was not there before, as a literal */
    OptionLiterals(Family family, IntSupplier fresh) {
        for (Option option : family.options()) {
            int first = 0;
            for (String value : option.valueNames()) {
                boolean second = option.values().size() == 2
                        && literals.containsKey(
                                new Choice(option.name(), option.valueNames().get(0)));
                first = second ? SolverInternals.not(first) : fresh.getAsInt();
                literals.put(new Choice(option.name(), value), first);
            }
        }
    }

    /** In the family's order. */
    Map<Choice, Integer> all() {
        return literals;
    }

    int of(OptionName option, String value) {
        Integer literal = literals.get(new Choice(option, value));
        if (literal == null) {
            throw new IllegalArgumentException("No value " + value + " of " + option);
        }
        return literal;
    }

    List<Integer> of(Option option) {
        return option.valueNames().stream()
                .map(value -> of(option.name(), value))
                .toList();
    }
}
