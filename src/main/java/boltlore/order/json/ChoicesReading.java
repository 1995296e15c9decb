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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
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
        this.options = Stream.concat(
                        family.options().stream().map(option -> option.name().text()),
                        family.options().stream()
                                .flatMap(option -> Stream.ofNullable(option.group()))
                                .map(group -> group.name().text())
                                .distinct())
                .toList();
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
        List<Option> answers = family.inGroup(new OptionName(name));
        if (!answers.isEmpty()) {
            several(name, answers, json, values);
            return;
        }
        if (!Known.check(name, json.location(), options, "an option of family '" + family.name() + "'", faults)) {
            return;
        }
        Option option = family.option(new OptionName(name)).orElseThrow();
        if (option.scale() != null) {
            faults.add(json.location()
                    .fault(
                            "'" + name + "' among the choices",
                            "'" + name + "' of the order itself, which settles it",
                            "Remove it here."));
            return;
        }
        Values.text(json, TextShape.NAME, faults)
                .filter(value -> Known.check(
                        value, json.location(), option.valueNames(), "a value of option '" + name + "'", faults))
                .ifPresent(value -> values.put(option.name(), value));
    }

    /** A list of those that are wanted; what is not in it is not wanted. */
    private void several(String name, List<Option> answers, Json json, Map<OptionName, String> values) {
        Map<String, OptionName> byValue = new LinkedHashMap<>();
        answers.forEach(
                option -> byValue.put(Objects.requireNonNull(option.group()).value(), option.name()));
        if (!(json instanceof Json.Arr list)) {
            faults.add(json.location()
                    .fault(json.shown(), "a list of values of '" + name + "', which takes several; [] for none", ""));
            return;
        }
        Set<OptionName> wanted = new HashSet<>();
        for (Json each : list.items()) {
            Values.text(each, TextShape.NAME, faults)
                    .filter(value -> Known.check(
                            value, each.location(), byValue.keySet(), "a value of option '" + name + "'", faults))
                    .filter(value -> !wanted.add(Objects.requireNonNull(byValue.get(value))))
                    .ifPresent(value ->
                            faults.add(each.location().fault("'" + value + "' a second time", "each value once", "")));
        }
        byValue.values().forEach(option -> {
            String before = values.put(option, wanted.contains(option) ? Option.YES : Option.NO);
            if (before != null) {
                faults.add(json.location()
                        .fault(
                                "'" + option + "' beside '" + name + "'",
                                "one of the two",
                                "Leave '" + option + "' out: the list of '" + name + "' says it."));
            }
        });
    }

    /** Options among the chosen ones that no repair may touch; a question with several answers stands for each of them. */
    SortedSet<OptionName> firm(ObjectReader reader, Collection<OptionName> chosen) {
        SortedSet<OptionName> firm = new TreeSet<>();
        reader.findTexts("fixed", TextShape.NAME, (name, location) -> {
            for (OptionName option : meant(name)) {
                if (knows(name, location) && !chosen.contains(option)) {
                    faults.add(location.fault("'" + name + "'", "an option that is chosen", "Choose its value too."));
                }
                firm.add(option);
            }
            return name;
        });
        return Collections.unmodifiableSortedSet(firm);
    }

    /** Options in the order of their importance to the customer; firm ones are above any rank. */
    List<OptionName> rank(ObjectReader reader, Collection<OptionName> firm) {
        List<List<OptionName>> rank = reader.findTexts("rank", TextShape.NAME, (name, location) -> {
            if (knows(name, location) && meant(name).stream().anyMatch(firm::contains)) {
                faults.add(location.fault(
                        "'" + name + "', which is fixed", "options that are not fixed", "Remove it here."));
            }
            return meant(name);
        });
        return rank.stream().flatMap(List::stream).toList();
    }

    private List<OptionName> meant(String name) {
        OptionName option = new OptionName(name);
        List<Option> answers = family.inGroup(option);
        return answers.isEmpty()
                ? List.of(option)
                : answers.stream().map(Option::name).toList();
    }

    private boolean knows(String name, SourceLocation location) {
        return Known.check(name, location, options, "an option of family '" + family.name() + "'", faults);
    }
}
