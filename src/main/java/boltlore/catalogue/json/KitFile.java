package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Effectivity;
import boltlore.catalogue.Fill;
import boltlore.catalogue.Line;
import boltlore.catalogue.Position;
import boltlore.catalogue.Route;
import boltlore.json.Allowed;
import boltlore.json.KeyRule;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;

/** families/…/kit/*.json: the positions of the kit with their lines. */
final class KitFile {

    private static final Allowed<Fill> FILLS = Allowed.of(Fill.values());
    private static final KeyRule NEVER_REQUIRED = new KeyRule.Without("fill", "free", "required");
    private static final KeyRule ONE_PLACE = new KeyRule.Apart("bag", "crate");
    private static final int LONGEST_MM = 100_000;

    private final Reading reading;
    private final ConditionReading conditions;
    private final ConditionReading overOptions;
    private final NeedReading needs;

    KitFile(Reading reading) {
        this.reading = reading;
        this.conditions = new ConditionReading(reading, ConditionReading.Over.OPTIONS_AND_POSITIONS);
        this.overOptions = new ConditionReading(reading, ConditionReading.Over.OPTIONS);
        this.needs = new NeedReading(reading, conditions);
    }

    List<Position> read(ObjectReader reader) {
        return reader.objects("positions", this::position);
    }

    /** Keys of a position that is written as its only line; they have moved into that line before they are read. */
    private void onlyLine(ObjectReader reader) {
        reading.findMentioned(reader, "part", Kind.PART);
        reader.findDecimal("quantity", Range.QUANTITY);
        conditions.orNull(reader, "when");
        reading.findAllMentioned(reader, "carries", Kind.POSITION);
        needs.needs(reader);
        needs.expects(reader);
        Reading.textOrNone(reader, "note");
    }

    private Position position(ObjectReader reader) {
        onlyLine(reader);
        String name = reading.named(reader, "position", Kind.POSITION);
        String under = reading.findMentioned(reader, "under", Kind.POSITION);
        Position position = new Position(
                new PositionName(name),
                reading.wording(reader, "says"),
                reading.mentioned(reader, "subSystem", Kind.SUB_SYSTEM),
                reading.mentioned(reader, "stage", Kind.STAGE),
                bag(reader),
                under == null ? null : new PositionName(under),
                reader.oneOf("fill", FILLS),
                conditions.orNull(reader, "required"),
                heldBy(reader),
                reader.findObjects("route", this::route),
                reader.objects("lines", this::line),
                new UpkeepReading(reading).documents(reader));
        if (reader.breaks(NEVER_REQUIRED)) {
            reader.faultAt(
                    "required",
                    "'required' on a free position",
                    "'required' on positions of fill 'one' or 'some'",
                    "Remove it.");
        }
        return reading.sources().put(position, reader.spot());
    }

    private static String bag(ObjectReader reader) {
        String bag = reader.findText("bag", TextShape.LINE).orElse("");
        String crate = reader.findText("crate", TextShape.LINE).orElse("");
        if (reader.breaks(ONE_PLACE)) {
            reader.faultAt("crate", "'bag' and 'crate'", "one of the two", "Remove one.");
        }
        return bag.isEmpty() ? crate : bag;
    }

    private List<List<LineName>> heldBy(ObjectReader reader) {
        return reader.findTextLists("heldBy", TextShape.NAME, (line, location) -> {
            reading.mention(Kind.LINE, line, location);
            return reading.sources().put(new LineName(line), location);
        });
    }

    private Route route(ObjectReader reader) {
        Route route = new Route(
                overOptions.orAlways(reader, "when"),
                reader.whole("needsMm", 1, LONGEST_MM),
                reader.whole("slackMm", 0, LONGEST_MM));
        return reading.sources().put(route, reader.spot());
    }

    private Line line(ObjectReader reader) {
        LineName name = new LineName(reading.named(reader, "line", Kind.LINE));
        PartNumber part = reading.part(reader, "part");
        BigDecimal quantity = reader.decimal("quantity", Range.QUANTITY);
        Condition when = conditions.orAlways(reader, "when");
        Effectivity effectivity = EffectivityReading.ofLine(reader);
        Line line = new Line(
                name,
                part,
                quantity,
                effectivity.with(when, reading.scales()),
                reading.findAllMentioned(reader, "carries", Kind.POSITION).stream()
                        .map(PositionName::new)
                        .toList(),
                needs.needs(reader),
                needs.expects(reader),
                Reading.textOrNone(reader, "note"),
                effectivity,
                ChangesReading.ofLine(reader));
        return reading.sources().put(line, reader.spot());
    }
}
