package boltlore.catalogue.json;

import boltlore.catalogue.Accepted;
import boltlore.catalogue.Condition;
import boltlore.catalogue.Donor;
import boltlore.catalogue.FinishRule;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Measure;
import boltlore.catalogue.Option;
import boltlore.catalogue.Pair;
import boltlore.catalogue.Workshop;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
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
            List<Accepted> accepted,
            List<Measure> measures) {}

    private enum Ship {
        ONE,
        BOTH
    }

    private static final Range MM = Range.above(0, 100_000);
    private static final KeyRule FOLLOWS = new KeyRule.With("ship", "one", "follows");
    private static final KeyRule NEITHER = new KeyRule.Without("ship", "both", "follows", "required");
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
                reader.objects("options", options::read).stream()
                        .flatMap(List::stream)
                        .toList(),
                reader.findObjects("limits", this::limit),
                reader.findObject("finishes", this::finishes).orElse(Map.of()),
                reader.findObjects("pairs", this::pair),
                accepted(reader),
                reader.findSomeObjects("measured", this::measure));
    }

    private Measure measure(ObjectReader reader) {
        Measure measure = new Measure(
                reading.named(reader, "measure", Kind.MEASURE),
                reading.wording(reader, "asks"),
                reader.decimal("fromMm", MM),
                reader.decimal("toMm", MM),
                reader.decimal("usualMm", MM));
        boolean within = measure.fromMm().compareTo(measure.usualMm()) <= 0
                && measure.usualMm().compareTo(measure.toMm()) <= 0;
        if (reader.sound() && !within) {
            reader.faultAt(
                    "usualMm",
                    measure.usualMm().toPlainString() + " mm",
                    "from " + measure.fromMm().toPlainString() + " to "
                            + measure.toMm().toPlainString() + " mm",
                    "Check the three figures.");
        }
        return measure;
    }

    private Limit limit(ObjectReader reader) {
        boolean never = reader.has("never");
        reader.oneWay("never", "when then");
        String name = reading.named(reader, "limit", Kind.LIMIT);
        String because = reader.text("because");
        String source = reader.findText("source").orElse(null);
        Condition when = overOptions.orAlways(reader, "when");
        Condition then = overOptions.orNull(reader, "then");
        Condition forbidden = overOptions.orAlways(reader, "never");
        Limit limit = new Limit(name, because, source, never ? forbidden : when, never ? null : then);
        return reading.sources().put(limit, reader.spot());
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
        reader.entries(TextShape.NAME, this::finishRule).forEach((role, rule) -> {
            reading.names().give(Kind.FINISH_ROLE, reading.family(), role, reader.spot(role), reading.faults());
            rules.put(role, rule);
        });
        return Collections.unmodifiableMap(rules);
    }

    private FinishRule finishRule(ObjectReader reader) {
        reader.oneWay("decidedBy", "fixed");
        String option = reading.findMentioned(reader, "decidedBy", Kind.OPTION);
        oneAnswer(reader, "decidedBy", option);
        String fixed = reading.findMentioned(reader, "fixed", Kind.FINISH);
        FinishRule rule = option != null
                ? new FinishRule.DecidedBy(new OptionName(option))
                : new FinishRule.Fixed(fixed == null ? "" : fixed);
        return reading.sources().put(rule, reader.spot());
    }

    private Pair pair(ObjectReader reader) {
        String name = reading.named(reader, "pair", Kind.PAIR);
        Ship ship = reader.oneOf("ship", SHIP);
        Condition due = conditions.orAlways(reader, "required");
        OneHand follows = reader.findObject("follows", this::follows).orElse(new OneHand(new OptionName(""), "", ""));
        refuse(reader);
        Pair pair = ship == Ship.ONE
                ? new Pair.One(name, follows.option(), follows.left(), follows.right(), due)
                : new Pair.Both(name);
        return reading.sources().put(pair, reader.spot());
    }

    private record OneHand(OptionName option, String left, String right) {}

    private OneHand follows(ObjectReader reader) {
        String option = reading.mentioned(reader, "option", Kind.OPTION);
        oneAnswer(reader, "option", option);
        return new OneHand(new OptionName(option), value(reader, option, "left"), value(reader, option, "right"));
    }

    private void oneAnswer(ObjectReader reader, String key, @Nullable String option) {
        if (option != null && reading.takesSeveral(option)) {
            reader.faultAt(
                    key,
                    "'" + option + "', which takes several answers",
                    "an option with exactly one answer",
                    "Name the option of one of its answers, such as '" + option + "-…'.");
        }
    }

    private String value(ObjectReader follows, String option, String hand) {
        String value = follows.text(hand, TextShape.NAME);
        if (!value.isEmpty()) {
            reading.mentionValue(option, value, follows.spot(hand));
        }
        return value;
    }

    private static void refuse(ObjectReader reader) {
        if (reader.breaks(FOLLOWS)) {
            reader.fault("no 'follows'", "the key 'follows'", "Add it.");
        }
        if (reader.breaks(NEITHER)) {
            for (String key : List.of("follows", "required")) {
                if (reader.has(key)) {
                    String found = "'" + key + "' on a pair of which both ship";
                    reader.faultAt(key, found, "it on a pair of which one ships", "");
                }
            }
        }
    }
}
