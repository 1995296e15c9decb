package boltlore.catalogue.json;

import boltlore.catalogue.BuildDates;
import boltlore.catalogue.Facts;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.catalogue.Role;
import boltlore.catalogue.Workshop;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Reads one option with its values. */
final class OptionReading {

    private static final KeyRule NOT_RESERVED = new KeyRule.Other("option", ConditionReading.RESERVED);
    private static final Allowed<Choose> CHOOSE = Allowed.of(Choose.values());

    /** The word for choosing none of several. */
    static final String NONE_OF_THEM = "none";

    private static final List<String> OF_ONE_ANSWER = List.of("role", "default", "settledBy");
    private static final Map<String, String> NONE = Map.of("en", ": no", "de", ": nein", "fr", "\u00a0: non");

    private enum Choose {
        ONE,
        SEVERAL
    }

    private static final Allowed<Role> ROLES = Allowed.of(Role.values(), Role::written);

    private final Reading reading;
    private final FactsReading facts;
    private final RoleFacts roles;

    OptionReading(Reading reading, Workshop workshop) {
        this.reading = reading;
        this.roles = new RoleFacts(reading, workshop);
        this.facts = new FactsReading(reading);
    }

    /** One option, or one for each answer to a question that takes several. */
    List<Option> read(ObjectReader reader) {
        boolean several = reader.findOneOf("choose", CHOOSE) == Choose.SEVERAL;
        Option option = option(reader, several);
        if (!several) {
            return List.of(option);
        }
        for (String key : OF_ONE_ANSWER) {
            if (reader.has(key)) {
                reader.faultAt(
                        key,
                        "'" + key + "' of a question with several answers",
                        "it on a question with exactly one answer",
                        "Remove it.");
            }
        }
        return option.values().stream()
                .map(value -> reading.sources()
                        .put(member(option, value), reading.sources().of(value)))
                .toList();
    }

    private static Option member(Option asked, OptionValue value) {
        Option.Group group = new Option.Group(asked.name(), asked.asks(), value.value());
        OptionValue yes = new OptionValue(Option.YES, value.says(), Facts.NONE);
        OptionValue no = new OptionValue(Option.NO, without(value.says()), Facts.NONE);
        return new Option(
                group.member(),
                asked.asks() + " " + value.says().english() + "?",
                null,
                List.of(yes, no),
                null,
                List.of(),
                group,
                null);
    }

    /** 'Roof rack: no', in every language in which the answer is told. */
    private static Wording without(Wording says) {
        Map<String, String> without = new TreeMap<>();
        says.byLanguage().forEach((language, text) -> without.put(language, text + NONE.getOrDefault(language, ": –")));
        return new Wording(without);
    }

    private Option option(ObjectReader reader, boolean several) {
        String name = reading.named(reader, "option", Kind.OPTION);
        if (several && !name.isEmpty()) {
            reading.severalOf(name);
        }
        if (reader.breaks(NOT_RESERVED)) {
            reader.faultAt(
                    "option",
                    "'" + name + "', a word of the conditions' own language",
                    "a name other than " + String.join(", ", ConditionReading.RESERVED),
                    "Rename it.");
        }
        Role role = reader.findOneOf("role", ROLES);
        Option option = new Option(
                new OptionName(name),
                reader.text("asks"),
                role,
                reader.objects("values", value -> value(value, name, role, several)),
                usual(reader, name),
                reader.findObject("settledBy", by -> settledBy(by, name)).orElse(List.of()));
        return reading.sources().put(option, reader.spot());
    }

    private OptionValue value(ObjectReader reader, String option, @Nullable Role role, boolean several) {
        String name = reader.text("value", TextShape.NAME);
        if (!name.isEmpty()) {
            reading.giveValue(option, name, reader.spot("value"));
        }
        if (several && !option.isEmpty() && !name.isEmpty()) {
            answer(option, name, reader);
        }
        Facts own = reader.findObject("facts", facts::read).orElse(Facts.NONE);
        if (role != null && reader.sound()) {
            own = roles.complete(role, name, own, reader);
        }
        OptionValue value = new OptionValue(name, reading.wording(reader, "says"), own);
        return reading.sources().put(value, reader.spot());
    }

    /** An answer is an option of its own, whose name nobody else has. */
    private void answer(String option, String name, ObjectReader reader) {
        String member = Option.Group.member(new OptionName(option), name).text();
        reading.give(Kind.OPTION, member, reader.spot("value"));
        reading.giveValue(member, Option.YES, reader.spot("value"));
        reading.giveValue(member, Option.NO, reader.spot("value"));
        if (name.equals(NONE_OF_THEM)) {
            reader.faultAt("value", "'none'", "an answer; 'none' stands for choosing none of them", "Remove it.");
        }
        if (reader.has("facts")) {
            reader.faultAt(
                    "facts",
                    "facts of one of several answers",
                    "facts on a question with exactly one answer",
                    "Ask for it in a question of its own.");
        }
    }

    private List<BuildDates> settledBy(ObjectReader reader, String option) {
        List<BuildDates> dates = reader.objects("donorBuilt", each -> dates(each, option));
        if (reader.sound()) {
            BuildDatesCheck.check(dates, reading);
        }
        return dates;
    }

    private @Nullable String usual(ObjectReader reader, String option) {
        String usual = reader.findText("default", TextShape.NAME).orElse(null);
        if (usual != null) {
            reading.mentionValue(option, usual, reader.spot("default"));
        }
        return usual;
    }

    private BuildDates dates(ObjectReader reader, String option) {
        String value = reader.text("value", TextShape.NAME);
        if (!value.isEmpty()) {
            reading.mentionValue(option, value, reader.spot("value"));
        }
        BuildDates dates = new BuildDates(value, reader.findDate("from"), reader.findDate("to"));
        return reading.sources().put(dates, reader.spot());
    }
}
