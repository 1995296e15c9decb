package boltlore.proof.evidence;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A variable for each value of each option, which holds when the value is chosen: from 1, in the family's order. */
final class ValueVariables {

    private final Map<Choice, Integer> numbers = new LinkedHashMap<>();

    ValueVariables(Family family) {
        for (Option option : family.options()) {
            for (OptionValue value : option.values()) {
                numbers.put(new Choice(option.name(), value.value()), numbers.size() + 1);
            }
        }
    }

    Map<Choice, Integer> all() {
        return numbers;
    }

    int of(OptionName option, String value) {
        Integer number = numbers.get(new Choice(option, value));
        if (number == null) {
            throw new IllegalArgumentException("No value " + value + " of " + option);
        }
        return number;
    }

    List<Integer> of(Option option) {
        return option.values().stream()
                .map(value -> of(option.name(), value.value()))
                .toList();
    }
}
