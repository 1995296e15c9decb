package boltlore.order.json;

import boltlore.catalogue.BuildDate;
import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.json.Faults;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.Shape;
import boltlore.json.SourceLocation;
import boltlore.json.TextShape;
import boltlore.json.Values;
import boltlore.measure.OptionName;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Reads which value each option has, and how firmly. */
final class ChoicesReading {

    /** Values by option; byDate lists the options that the donor's build date has settled. */
    record Chosen(Map<OptionName, String> values, SortedSet<OptionName> byDate) {}

    private final Family family;
    private final List<String> options;
    private final Faults faults;

    ChoicesReading(Family family, Faults faults) {
        this.family = family;
        this.options =
                family.options().stream().map(option -> option.name().text()).toList();
        this.faults = faults;
    }

    Chosen chosen(ObjectReader reader, @Nullable BuildDate donorBuilt) {
        Map<OptionName, String> values = new HashMap<>();
        reader.get("choices", new Shape.Named("choices")).ifPresent(json -> choices(json, values));
        SortedSet<OptionName> byDate = new TreeSet<>();
        for (Option option : family.options()) {
            String value = donorBuilt == null ? null : settled(option, donorBuilt);
            if (value != null && values.putIfAbsent(option.name(), value) == null) {
                byDate.add(option.name());
            }
        }
        return new Chosen(values, Collections.unmodifiableSortedSet(byDate));
    }

    private static @Nullable String settled(Option option, BuildDate donorBuilt) {
        return option.builtFrom().stream()
                .filter(dates -> dates.holds(donorBuilt))
                .map(BuildDates::value)
                .findFirst()
                .orElse(null);
    }

    private void choices(Json json, Map<OptionName, String> values) {
        if (json instanceof Json.Obj choices) {
            choices.members().forEach((option, value) -> choice(option, value, values));
        } else {
            faults.add(json.location().fault(json.shown(), "an object of options with their values", ""));
        }
    }

    private void choice(String name, Json json, Map<OptionName, String> values) {
        if (!Known.check(name, json.location(), options, "an option of family '" + family.name() + "'", faults)) {
            return;
        }
        Option option = family.option(new OptionName(name)).orElseThrow();
        Values.text(json, TextShape.NAME, faults)
                .filter(value -> Known.check(
                        value, json.location(), option.valueNames(), "a value of option '" + name + "'", faults))
                .ifPresent(value -> values.put(option.name(), value));
    }

    /** Options among the chosen ones that no repair may touch. */
    SortedSet<OptionName> firm(ObjectReader reader, Collection<OptionName> chosen) {
        SortedSet<OptionName> firm = new TreeSet<>();
        reader.findTexts("fixed", TextShape.NAME, (name, location) -> {
            OptionName option = new OptionName(name);
            if (knows(name, location) && !chosen.contains(option)) {
                faults.add(location.fault("'" + name + "'", "an option that is chosen", "Choose its value too."));
            }
            return firm.add(option);
        });
        return Collections.unmodifiableSortedSet(firm);
    }

    /** Options in the order of their importance to the customer; firm ones are above any rank. */
    List<OptionName> rank(ObjectReader reader, Collection<OptionName> firm) {
        return reader.findTexts("rank", TextShape.NAME, (name, location) -> {
            OptionName option = new OptionName(name);
            if (knows(name, location) && firm.contains(option)) {
                faults.add(location.fault(
                        "'" + name + "', which is fixed", "options that are not fixed", "Remove it here."));
            }
            return option;
        });
    }

    private boolean knows(String name, SourceLocation location) {
        return Known.check(name, location, options, "an option of family '" + family.name() + "'", faults);
    }
}
