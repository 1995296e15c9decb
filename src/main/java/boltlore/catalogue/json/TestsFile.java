package boltlore.catalogue.json;

import boltlore.catalogue.Circuit;
import boltlore.catalogue.EndOfLine;
import boltlore.catalogue.Instrument;
import boltlore.catalogue.KitTest;
import boltlore.catalogue.LimitRule;
import boltlore.catalogue.Scale;
import boltlore.catalogue.TestGroup;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** families/…/tests.json: how finished kits are tested, and which labels and manual sections go with them. */
final class TestsFile {

    static final Range SHOWN = Range.between(-1_000_000_000, 1_000_000_000);

    /** Those of the rules, and what else is read in a workshop. */
    static final Allowed<String> UNITS = Allowed.of(Stream.concat(
                    Arrays.stream(LimitRule.values()).map(LimitRule::unit),
                    Stream.of("kohm", "s", "min", "mbar", "bar", "degC", "l/min", "g", "mm"))
            .distinct()
            .toArray(String[]::new));

    private static final Allowed<Circuit> CIRCUITS = Allowed.of(Circuit.values(), Circuit::written);

    private final Reading reading;
    private final ConditionReading conditions;
    private final DemandReading demands = new DemandReading();
    private final PapersReading papers;

    TestsFile(Reading reading) {
        this.reading = reading;
        this.conditions = new ConditionReading(reading, ConditionReading.Over.OPTIONS_AND_POSITIONS);
        this.papers = new PapersReading(reading, conditions);
    }

    EndOfLine read(ObjectReader reader) {
        return new EndOfLine(
                Keyed.by(reader.findObjects("instruments", this::instrument), Instrument::name),
                reader.findObjects("groups", this::group),
                reader.findObjects("labels", papers::label),
                reader.findObjects("sections", papers::section));
    }

    private Instrument instrument(ObjectReader reader) {
        Instrument instrument = new Instrument(
                reading.named(reader, "instrument", Kind.INSTRUMENT),
                reading.wording(reader, "says"),
                reader.findObject("scale", this::scale).orElse(null));
        return reading.sources().put(instrument, reader.spot());
    }

    private @Nullable Scale scale(ObjectReader reader) {
        Scale scale = new Scale(
                reader.oneOf("unit", UNITS),
                reader.decimal("from", SHOWN),
                reader.decimal("to", SHOWN),
                reader.decimal("resolution", Range.POSITIVE));
        if (reader.sound() && width(scale).compareTo(scale.resolution()) < 0) {
            reader.fault("a scale with not one step", "'from' below 'to', and a finer 'resolution'", "");
        }
        return reading.sources().put(scale, reader.spot());
    }

    private static BigDecimal width(Scale scale) {
        return scale.to().subtract(scale.from());
    }

    private TestGroup group(ObjectReader reader) {
        return new TestGroup(
                reading.named(reader, "group", Kind.TEST_GROUP),
                reading.wording(reader, "says"),
                reader.findOneOf("circuit", CIRCUITS),
                reading.wording(reader, "before"),
                reading.findAllMentioned(reader, "cautions", Kind.CAUTION),
                reader.objects("tests", this::test),
                minutes(reader));
    }

    private static BigDecimal minutes(ObjectReader reader) {
        BigDecimal found = reader.findDecimal("minutes", Range.between(0, 1_440));
        return found == null ? BigDecimal.ZERO : found;
    }

    private KitTest test(ObjectReader reader) {
        KitTest test = new KitTest(
                reading.named(reader, "test", Kind.TEST),
                reading.wording(reader, "says"),
                conditions.orAlways(reader, "when"),
                positions(reader, reading),
                reader.truth("earthPoints", false),
                reading.wording(reader, "method"),
                reading.mentioned(reader, "with", Kind.INSTRUMENT),
                reader.object("limit", demands::read),
                reading.findMentioned(reader, "bound", Kind.BOUND));
        return reading.sources().put(test, reader.spot());
    }

    static List<PositionName> positions(ObjectReader reader, Reading reading) {
        return reading.findAllMentioned(reader, "at", Kind.POSITION).stream()
                .map(PositionName::new)
                .toList();
    }
}
