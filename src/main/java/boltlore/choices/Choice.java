package boltlore.choices;

import boltlore.measure.OptionName;

/** An option with its value. */
public record Choice(OptionName option, String value) implements Comparable<Choice> {
    @Override
    public int compareTo(Choice other) {
        int byOption = option.compareTo(other.option);
        return byOption != 0 ? byOption : value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return option + "=" + value;
    }
}
