package boltlore.choices;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.measure.OptionName;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Choices in one family, complete or partial, in the family's order of options. */
public final class Choices {

    private final Family family;
    private final Map<OptionName, String> values;

    private Choices(Family family, Map<OptionName, String> values) {
        this.family = family;
        this.values = values;
    }

    /**
     * Choices over known options and values.
     *
     * @throws IllegalArgumentException where the family does not know an option or value: readers report that as a
     *     fault before they come here
     */
    public static Choices of(Family family, Map<OptionName, String> chosen) {
        Map<OptionName, String> ordered = new LinkedHashMap<>();
        for (Option option : family.options()) {
            String value = chosen.get(option.name());
            if (value != null) {
                if (option.value(value).isEmpty()) {
                    throw new IllegalArgumentException("No value " + value + " of " + option.name());
                }
                ordered.put(option.name(), value);
            }
        }
        if (ordered.size() != chosen.size()) {
            throw new IllegalArgumentException("Not all options known: " + chosen.keySet());
        }
        return new Choices(family, Collections.unmodifiableMap(ordered));
    }

    public Family family() {
        return family;
    }

    public Map<OptionName, String> values() {
        return values;
    }

    public Optional<String> value(OptionName option) {
        return Optional.ofNullable(values.get(option));
    }

    public Choices with(OptionName option, String value) {
        Map<OptionName, String> changed = new LinkedHashMap<>(values);
        changed.put(option, value);
        return of(family, changed);
    }

    public Choices without(OptionName option) {
        Map<OptionName, String> changed = new LinkedHashMap<>(values);
        changed.remove(option);
        return of(family, changed);
    }

    /** Options that have no value yet, in the family's order. */
    public List<Option> unsettled() {
        return family.options().stream()
                .filter(option -> !values.containsKey(option.name()))
                .toList();
    }

    public boolean settled() {
        return values.size() == family.options().size();
    }

    /** The chosen value of the option in that role. */
    public Optional<OptionValue> inRole(Role role) {
        return family.inRole(role).flatMap(option -> value(option.name()).flatMap(option::value));
    }

    /** The facts of the chosen value in that role; none where nothing is chosen. */
    public Facts facts(Role role) {
        return inRole(role).map(OptionValue::facts).orElse(Facts.NONE);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Choices choices
                && family.name().equals(choices.family.name())
                && values.equals(choices.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
