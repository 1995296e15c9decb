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
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads one option with its values. */
final class OptionReading {

    private static final KeyRule NOT_RESERVED = new KeyRule.Other("option", ConditionReading.RESERVED);
    private static final Allowed<Role> ROLES = Allowed.of(Role.values(), Role::written);

    private final Reading reading;
    private final FactsReading facts;
    private final RoleFacts roles;

    OptionReading(Reading reading, Workshop workshop) {
        this.reading = reading;
        this.roles = new RoleFacts(reading, workshop);
        this.facts = new FactsReading(reading);
    }

    Option option(ObjectReader reader) {
        String name = reading.named(reader, "option", Kind.OPTION);
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
                reader.objects("values", value -> value(value, name, role)),
                usual(reader, name),
                reader.findObject("settledBy", by -> settledBy(by, name)).orElse(List.of()));
        return reading.sources().put(option, reader.spot());
    }

    private OptionValue value(ObjectReader reader, String option, @Nullable Role role) {
        String name = reader.text("value", TextShape.NAME);
        if (!name.isEmpty()) {
            reading.giveValue(option, name, reader.spot("value"));
        }
        Facts own = reader.findObject("facts", facts::read).orElse(Facts.NONE);
        if (role != null && reader.sound()) {
            own = roles.complete(role, name, own, reader);
        }
        OptionValue value = new OptionValue(name, reading.wording(reader, "says"), own);
        return reading.sources().put(value, reader.spot());
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
