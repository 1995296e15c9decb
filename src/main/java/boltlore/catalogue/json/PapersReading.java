package boltlore.catalogue.json;

import boltlore.catalogue.Label;
import boltlore.catalogue.ManualSection;
import boltlore.json.ObjectReader;
import boltlore.json.TextShape;
import boltlore.measure.PositionName;
import boltlore.measure.Wording;

/** Reads labels and manual sections, each with the position of the kit that holds it. */
final class PapersReading {

    private final Reading reading;
    private final ConditionReading conditions;

    PapersReading(Reading reading, ConditionReading conditions) {
        this.reading = reading;
        this.conditions = conditions;
    }

    Label label(ObjectReader reader) {
        return new Label(
                reading.named(reader, "label", Kind.LABEL),
                reading.wording(reader, "says"),
                reading.wording(reader, "where"),
                reading.findWording(reader, "mark").orElse(Wording.english("")),
                from(reader),
                conditions.orAlways(reader, "when"),
                TestsFile.positions(reader, reading));
    }

    ManualSection section(ObjectReader reader) {
        return new ManualSection(
                reader.text("section", TextShape.LINE),
                reading.wording(reader, "says"),
                from(reader),
                conditions.orAlways(reader, "when"));
    }

    private PositionName from(ObjectReader reader) {
        return new PositionName(reading.mentioned(reader, "from", Kind.POSITION));
    }
}
