package boltlore.cli;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.faults.Fault;
import boltlore.faults.Nearest;
import boltlore.faults.Outcome;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads choices as they are written on the command line: OPTION=VALUE. */
final class WrittenChoices {

    private static final int FEW = 12;

    private final Family family;
    private final List<Fault> faults = new ArrayList<>();

    private WrittenChoices(Family family) {
        this.family = family;
    }

    /** The choices before, with those written instead or in addition. */
    static Outcome<Choices> added(Choices before, List<String> written) {
        WrittenChoices reading = new WrittenChoices(before.family());
        Map<OptionName, String> values = new LinkedHashMap<>();
        for (String each : written) {
            if (reading.several(each, values)) {
                continue;
            }
            reading.read(each).ifPresent(choice -> reading.put(choice, values));
        }
        Choices all = before;
        for (Map.Entry<OptionName, String> value : values.entrySet()) {
            all = all.with(value.getKey(), value.getValue());
        }
        return reading.faults.isEmpty() ? Outcome.sound(all) : Outcome.faulty(reading.faults);
    }

    static Outcome<Choice> one(Family family, String written) {
        WrittenChoices reading = new WrittenChoices(family);
        Optional<Choice> choice = reading.read(written);
        return choice.isPresent() ? Outcome.sound(choice.get()) : Outcome.faulty(reading.faults);
    }

    /**
     * An answer to a question by the number or the name of a value, or to any question as OPTION=VALUE.
     *
     * @param question that is asked, or null where none is
     */
    static Outcome<Choice> answer(Family family, @Nullable Option question, String said) {
        if (question != null && question.group() != null) {
            return one(family, SeveralAsked.of(family, question.group()).wanted(said));
        }
        return one(
                        family,
                        question == null || said.contains("=")
                                ? said
                                : question.name() + "=" + numbered(question.valueNames(), said))
                .then(choice -> chosen(family, choice));
    }

    /** What the order's date or chassis number settles is said by them. */
    private static Outcome<Choice> chosen(Family family, Choice choice) {
        boolean settled = family.option(choice.option())
                .filter(option -> option.scale() != null)
                .isPresent();
        return settled
                ? Outcome.faulty(Fault.of(
                        "",
                        "'" + choice + "', which follows from the order",
                        "'" + choice.option() + "' with its date or number",
                        ""))
                : Outcome.sound(choice);
    }

    private static String numbered(List<String> names, String said) {
        boolean number = said.matches("\\d{1,6}") && !names.contains(said);
        int place = number ? Integer.parseInt(said) : 0;
        return place >= 1 && place <= names.size() ? names.get(place - 1) : said;
    }

    /** Whether it begins as OPTION=VALUE does. */
    static boolean namesOption(Family family, String line) {
        int at = line.indexOf('=');
        OptionName name = new OptionName(line.substring(0, Math.max(at, 0)));
        return at > 0
                && (family.option(name).isPresent() || !family.inGroup(name).isEmpty());
    }

    static Outcome<OptionName> option(Family family, String name) {
        WrittenChoices reading = new WrittenChoices(family);
        Optional<Option> option = reading.findOption(name);
        return option.isPresent() ? Outcome.sound(option.get().name()) : Outcome.faulty(reading.faults);
    }

    /** Whether it answers a question that takes several: EXTRAS=roof-rack,tow-bar, or EXTRAS=none. */
    private boolean several(String written, Map<OptionName, String> values) {
        int at = written.indexOf('=');
        Option.Group group = at < 0
                ? null
                : family.inGroup(new OptionName(written.substring(0, at))).stream()
                        .findFirst()
                        .map(Option::group)
                        .orElse(null);
        if (group == null) {
            return false;
        }
        SeveralAsked question = SeveralAsked.of(family, group);
        Outcome<Choices> answered = question.answered(Choices.of(family, Map.of()), written.substring(at + 1));
        faults.addAll(answered.faults());
        if (answered instanceof Outcome.Sound<Choices> sound) {
            sound.value().values().forEach((option, value) -> put(new Choice(option, value), values));
        }
        return true;
    }

    private void put(Choice choice, Map<OptionName, String> values) {
        String before = values.putIfAbsent(choice.option(), choice.value());
        if (before != null) {
            fault("option '" + choice.option() + "' twice", "each option once", "");
        }
    }

    private Optional<Choice> read(String written) {
        int at = written.indexOf('=');
        if (at < 0) {
            fault("'" + written + "'", "OPTION=VALUE", whereValue(written));
            return Optional.empty();
        }
        String value = written.substring(at + 1);
        return findOption(written.substring(0, at))
                .filter(option -> known(option, value))
                .map(option -> new Choice(option.name(), value));
    }

    private Optional<Option> findOption(String name) {
        Optional<Option> option = family.option(new OptionName(name));
        if (option.isEmpty()) {
            List<String> names =
                    family.options().stream().map(each -> each.name().text()).toList();
            fault("option '" + name + "'", "an option of family '" + family.name() + "'", advice(name, names));
        }
        return option;
    }

    private boolean known(Option option, String value) {
        if (option.value(value).isEmpty()) {
            fault(
                    "value '" + value + "'",
                    "a value of option '" + option.name() + "'",
                    advice(value, option.valueNames()));
            return false;
        }
        return true;
    }

    private static String advice(String written, List<String> known) {
        String all = known.size() <= FEW ? "There are: " + String.join(", ", known) : "";
        return Nearest.advice(written, known, all);
    }

    private String whereValue(String value) {
        return family.options().stream()
                .filter(option -> option.value(value).isPresent())
                .findFirst()
                .map(option -> "Did you mean '" + option.name() + "=" + value + "'?")
                .orElse("");
    }

    private void fault(String found, String expected, String advice) {
        faults.add(Fault.of("", found, expected, advice));
    }
}
