package boltlore.catalogue.json;

import boltlore.catalogue.Accepted;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Donor;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Workshop;
import boltlore.json.Allowed;
import boltlore.json.Json;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import boltlore.measure.OptionName;
import boltlore.measure.Wording;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** families/…/family.json: the donor vehicle, the options, the limits, the finishes, the pairs, the accepted findings. */
final class FamilyFile {

    /** What stands in the file; positions and companions stand in others. */
    record Head(
            String name,
            Wording says,
            @Nullable Donor donor,
            List<Option> options,
            List<Limit> limits,
            Map<String, FinishRule> finishes,
            List<Pair> pairs,
            List<Accepted> accepted) {}

    private enum Ship {
        ONE,
        BOTH
    }

    private static final Allowed<Ship> SHIP = Allowed.of(Ship.values());

    private final Reading reading;
    private final OptionReading options;
    private final ConditionReading overOptions;
    private final ConditionReading conditions;

    FamilyFile(Reading reading, Workshop workshop) {
        this.options = new OptionReading(reading, workshop);
        this.reading = reading;
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
        this.conditions = new ConditionReading(reading, ConditionReading.Over.OPTIONS_AND_POSITIONS);
    }

    /** @param folder name of the family's folder, which is the family's name too */
    Head read(ObjectReader reader, String folder) {
        String name = reader.text("family", TextShape.NAME);
        if (!name.isEmpty() && !name.equals(folder)) {
            reader.faultAt(
                    "family", "'" + name + "'", "'" + folder + "', as the folder is called", "Rename one of the two.");
        }
        return new Head(
                folder,
                reading.wording(reader, "says"),
                reader.findObject("donor", new DonorReading(reading)::read).orElse(null),
                reader.objects("options", options::option),
                reader.findObjects("limits", this::limit),
                reader.findObject("finishes", this::finishes).orElse(Map.of()),
                reader.findObjects("pairs", this::pair),
                accepted(reader));
    }

    private Limit limit(ObjectReader reader) {
        boolean never = reader.has("never");
        if (never ? reader.has("when") || reader.has("then") : !reader.has("when") || !reader.has("then")) {
            OneOfTwo.refuse(reader, "either 'never', or 'when' and 'then'");
        }
        String name = reading.named(reader, "limit", Kind.LIMIT);
        String because = reader.text("because");
        String source = reader.findText("source").orElse(null);
        Condition when = overOptions.orAlways(reader, "when");
        Condition then = overOptions.orNull(reader, "then");
        Condition forbidden = overOptions.orAlways(reader, "never");
        Limit limit = new Limit(name, because, source, never ? forbidden : when, never ? null : then);
        return reading.places().put(limit, reader.spot());
    }

    private static List<Accepted> accepted(ObjectReader reader) {
        Set<String> findings = new HashSet<>();
        return reader.findObjects("accepted", each -> {
            Accepted accepted = new Accepted(each.text("finding"), each.text("because"));
            if (!accepted.finding().isEmpty() && !findings.add(accepted.finding())) {
                each.faultAt("finding", "'" + accepted.finding() + "' twice", "each finding once", "");
            }
            return accepted;
        });
    }

    private Map<String, FinishRule> finishes(ObjectReader reader) {
        Map<String, FinishRule> rules = new LinkedHashMap<>();
        for (String role : reader.keys()) {
            if (!TextShape.NAME.fits().test(role)) {
                reader.faultAt(role, "'" + role + "'", TextShape.NAME.says(), "");
            }
            Json json = reader.find(role).orElseThrow();
            reading.names().give(Kind.FINISH_ROLE, reading.family(), role, json.spot(), reading.faults());
            rules.put(role, reader.object(role, this::finishRule));
        }
        return Collections.unmodifiableMap(rules);
    }

    private FinishRule finishRule(ObjectReader reader) {
        OneOfTwo.check(reader, "decidedBy", "fixed");
        String option = reading.findMentioned(reader, "decidedBy", Kind.OPTION);
        String fixed = reading.findMentioned(reader, "fixed", Kind.FINISH);
        FinishRule rule = option != null
                ? new FinishRule.DecidedBy(new OptionName(option))
                : new FinishRule.Fixed(fixed == null ? "" : fixed);
        return reading.places().put(rule, reader.spot());
    }

    private Pair pair(ObjectReader reader) {
        String name = reading.named(reader, "pair", Kind.PAIR);
        Ship ship = reader.oneOf("ship", SHIP);
        Condition due = conditions.orAlways(reader, "required");
        return reading.places().put(ship == Ship.ONE ? one(reader, name, due) : both(reader, name), reader.spot());
    }

    private Pair one(ObjectReader reader, String name, Condition due) {
        return reader.object("follows", follows -> {
            String option = reading.mentioned(follows, "option", Kind.OPTION);
            return new Pair.One(
                    name, new OptionName(option), value(follows, option, "left"), value(follows, option, "right"), due);
        });
    }

    private String value(ObjectReader follows, String option, String hand) {
        String value = follows.text(hand, TextShape.NAME);
        if (!value.isEmpty()) {
            reading.mentionValue(option, value, follows.spot(hand));
        }
        return value;
    }

    private static Pair both(ObjectReader reader, String name) {
        for (String key : List.of("follows", "required")) {
            if (reader.find(key).isPresent()) {
                reader.faultAt(
                        key, "'" + key + "' on a pair of which both ship", "it on a pair of which one ships", "");
            }
        }
        return new Pair.Both(name);
    }
}
