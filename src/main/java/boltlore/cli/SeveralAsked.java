package boltlore.cli;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choosing.ChoiceState;
import boltlore.choosing.ConflictWords;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** One question that takes several answers, each of which is an option of its own. */
final class SeveralAsked {

    /** What is said where none of them is wanted. */
    static final String NONE = "none";

    private final Option.Group group;
    private final List<Option> answers;
    private final List<String> names;

    private SeveralAsked(Family family, Option.Group group) {
        this.group = group;
        this.answers = family.inGroup(group.name());
        this.names = answers.stream()
                .map(option -> Objects.requireNonNull(option.group()).value())
                .toList();
    }

    static SeveralAsked of(Family family, Option.Group group) {
        return new SeveralAsked(family, group);
    }

    /** The option with all that are asked in one question with it. */
    static List<Option> together(Family family, Option option) {
        return option.group() == null
                ? List.of(option)
                : family.inGroup(option.group().name());
    }

    /** All answers under their numbers: which are open, and why the others are settled. */
    void print(Screen screen, JobCard card, ChoiceState.Sound standing) {
        screen.heading(group.asks());
        for (int i = 0; i < answers.size(); i++) {
            Option option = answers.get(i);
            Choice yes = new Choice(option.name(), Option.YES);
            String settled = standing.choices()
                    .value(option.name())
                    .map(value -> " (" + value + ")")
                    .orElse("");
            String says = option.values().get(0).says().english() + settled;
            screen.wrapped(
                    2,
                    standing.isOpen(yes) || !settled.isEmpty()
                            ? String.format(Locale.ROOT, "%2d  %s: %s", i + 1, names.get(i), says)
                            : String.format(Locale.ROOT, "%2d  %s", i + 1, card.why(standing, yes)));
        }
        screen.wrapped(2, "Several may be named, as '1, 2'; '" + NONE + "' where none is wanted.");
    }

    /** The choices before with each answer of this question settled: those that are named, and no other. */
    Outcome<Choices> answered(Choices before, String said) {
        Set<String> wanted = new TreeSet<>();
        List<Fault> faults = new ArrayList<>();
        for (String each : said.strip().split("[,;\\s]+", -1)) {
            String name = numbered(each);
            if (names.contains(name)) {
                wanted.add(name);
            } else if (!name.equals(NONE) || said.strip().length() > NONE.length()) {
                faults.add(Fault.of(
                        "",
                        "value '" + each + "'",
                        "values of '" + group.name() + "', or '" + NONE + "'",
                        Nearest.advice(each, names, "There are: " + String.join(", ", names))));
            }
        }
        Choices all = before;
        for (int i = 0; i < answers.size(); i++) {
            all = all.with(answers.get(i).name(), wanted.contains(names.get(i)) ? Option.YES : Option.NO);
        }
        return faults.isEmpty() ? Outcome.sound(all) : Outcome.faulty(faults);
    }

    /** What is chosen once it is answered so; empty, and told why, where it cannot be. */
    Optional<Choices> said(String line, Screen screen, AskedOrder asked, ConflictWords words) {
        Outcome<Choices> outcome = answered(asked.choices(), line);
        outcome.faults().forEach(fault -> screen.wrapped(0, FaultWords.say(fault)));
        if (!(outcome instanceof Outcome.Sound<Choices> sound)) {
            return Optional.empty();
        }
        if (!asked.valid(sound.value())) {
            screen.wrapped(
                    2, words.contradiction(asked.choosing().chooser().conflict(sound.value(), asked.importance())));
            return Optional.empty();
        }
        return Optional.of(sound.value());
    }

    /** One answer by its number or name, as a choice that it is wanted; else what was said, for others to read. */
    String wanted(String said) {
        String name = numbered(said);
        return names.contains(name) ? Option.Group.member(group.name(), name) + "=" + Option.YES : said;
    }

    private String numbered(String said) {
        int place = said.matches("\\d{1,6}") && !names.contains(said) ? Integer.parseInt(said) : 0;
        return place >= 1 && place <= names.size() ? names.get(place - 1) : said;
    }
}
