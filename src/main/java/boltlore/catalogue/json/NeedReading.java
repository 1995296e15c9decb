package boltlore.catalogue.json;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Expectation;
import boltlore.catalogue.Need;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads what parts and lines bring with them, and what they count on. */
final class NeedReading {

    private final Reading reading;
    private final @Nullable ConditionReading conditions;

    /** @param conditions how {@code when} is read; null where needs have none, as in the part master */
    NeedReading(Reading reading, @Nullable ConditionReading conditions) {
        this.reading = reading;
        this.conditions = conditions;
    }

    List<Need> needs(ObjectReader reader) {
        return reader.findObjects("needs", this::need);
    }

    List<Expectation> expects(ObjectReader reader) {
        return reader.findObjects("expects", this::expectation);
    }

    private Need need(ObjectReader reader) {
        Need need = new Need(reading.part(reader, "part"), ask(reader), when(reader), reader.text("because"));
        return reading.sources().put(need, reader.spot());
    }

    private static Need.Ask ask(ObjectReader reader) {
        reader.oneWay("each", "joint atLeast");
        BigDecimal each = reader.findDecimal("each", Range.QUANTITY);
        String joint = reader.findText("joint", TextShape.NAME).orElse("");
        BigDecimal atLeast = reader.findDecimal("atLeast", Range.QUANTITY);
        return each != null || atLeast == null
                ? new Need.Each(each == null ? BigDecimal.ONE : each)
                : new Need.AtJoint(joint, atLeast);
    }

    private Expectation expectation(ObjectReader reader) {
        reader.oneWay("part", "position");
        String part = reading.findMentioned(reader, "part", Kind.PART);
        String position = reading.findMentioned(reader, "position", Kind.POSITION);
        Expectation.Target target = part != null
                ? new Expectation.OfPart(new PartNumber(part))
                : new Expectation.OfPosition(new PositionName(position == null ? "" : position));
        BigDecimal atLeast = reader.findDecimal("atLeast", Range.QUANTITY);
        Expectation expectation = new Expectation(
                target, atLeast == null ? BigDecimal.ONE : atLeast, when(reader), reader.text("because"));
        return reading.sources().put(expectation, reader.spot());
    }

    private Condition when(ObjectReader reader) {
        return conditions == null ? Condition.ALWAYS : conditions.orAlways(reader, "when");
    }
}
