package boltlore.catalogue.json;

import boltlore.catalogue.Demand;
import boltlore.catalogue.FoundState;
import boltlore.catalogue.HouseRules;
import boltlore.catalogue.HouseRules.Bound;
import boltlore.catalogue.HouseRules.NeededTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.PartKind;
import boltlore.catalogue.ThreadName;
import boltlore.catalogue.Traits;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;

/** house.json: what parts of one kind bring with them, which kinds and tests every vehicle must have, and what bounds limits. */
final class HouseFile {

    private static final Range AMPS = Range.above(0, 10_000);
    private static final Range WATTS = Range.above(0, 10_000_000);
    private static final int MOST = 1_000;
    private static final KeyRule SOME_SIDE = new KeyRule.OneWay("atLeast", "atMost", "atLeast atMost");

    private final Reading reading;

    HouseFile(Reading reading) {
        this.reading = reading;
    }

    HouseRules read(ObjectReader reader) {
        return new HouseRules(
                Keyed.by(reader.findObjects("kinds", this::kind), PartKind::name),
                Keyed.by(reader.findObjects("bounds", this::bound), Bound::name),
                reader.findObjects("tests", this::test));
    }

    private Bound bound(ObjectReader reader) {
        Bound bound = new Bound(
                reading.named(reader, "bound", Kind.BOUND),
                reader.text("says"),
                reader.oneOf("unit", TestsFile.UNITS),
                reader.findDecimal("atLeast", TestsFile.SHOWN),
                reader.findDecimal("atMost", TestsFile.SHOWN),
                reader.text("source"));
        if (reader.breaks(SOME_SIDE)) {
            reader.fault("neither 'atLeast' nor 'atMost'", "one of them, or both", "Say what it bounds.");
        }
        return bound;
    }

    /** Known by the state that is found, by the rule of its limit, or by its bound. */
    private NeededTest test(ObjectReader reader) {
        FoundState state = reader.findOneOf("state", DemandReading.STATES);
        LimitRule rule = reader.findOneOf("calculated", DemandReading.RULES);
        reader.oneWay("state", "calculated", "bound");
        return new NeededTest(
                reader.text("says"),
                reading.mentioned(reader, "with", Kind.PART_KIND),
                reader.truth("there", false),
                state != null
                        ? new Demand.InState(state)
                        : rule == null ? null : new Demand.Computed(rule, BigDecimal.ZERO),
                reading.findMentioned(reader, "bound", Kind.BOUND),
                reader.text("source"));
    }

    private PartKind kind(ObjectReader reader) {
        return new PartKind(
                reading.named(reader, "kind", Kind.PART_KIND),
                reading.wording(reader, "says"),
                reading.findAllMentioned(reader, "cautions", Kind.CAUTION),
                reader.findTexts("hs", Shapes.HS_BEGINNING, (code, location) -> code),
                reader.findOneOf("flow", FitReading.FLOWS),
                reader.findObjects("takes", this::takes),
                reader.truth("signed", false),
                reader.findOneOf("tracked", PartsFile.TRACKED),
                reader.findObject("needed", this::needed).orElse(null));
    }

    private PartKind.Takes takes(ObjectReader reader) {
        return new PartKind.Takes(reading.mentioned(reader, "kind", Kind.PART_KIND), reader.whole("quantity", 1, MOST));
    }

    private PartKind.Needed needed(ObjectReader reader) {
        List<String> with = reader.texts("with", TextShape.NAME, (kind, location) -> {
            reading.mention(Kind.PART_KIND, kind, location);
            return kind;
        });
        return new PartKind.Needed(
                with,
                reading.findAllMentioned(reader, "markets", Kind.MARKET),
                reading.wording(reader, "because"),
                reader.text("source"));
    }

    /** What a part says of itself for its kinds. */
    static Traits traits(Reading reading, ObjectReader reader) {
        return new Traits(
                reading.findAllMentioned(reader, "kinds", Kind.PART_KIND),
                reader.findDecimal("ratedAmps", AMPS),
                reader.findDecimal("ratedWatts", WATTS),
                reader.findText("stud", FitReading.THREAD)
                        .flatMap(ThreadName::of)
                        .orElse(null));
    }
}
