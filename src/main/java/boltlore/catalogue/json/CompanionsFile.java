package boltlore.catalogue.json;

import boltlore.catalogue.Companion;
import boltlore.json.ObjectReader;
import boltlore.measure.PartNumber;
import java.util.List;

/** families/…/companions.json: needs and expectations of parts that hold in one family only. */
final class CompanionsFile {

    private final Reading reading;
    private final NeedReading needs;

    CompanionsFile(Reading reading) {
        this.reading = reading;
        this.needs =
                new NeedReading(reading, new ConditionReading(reading, ConditionReading.Over.OPTIONS_AND_POSITIONS));
    }

    List<Companion> read(ObjectReader reader) {
        return reader.findObjects("companions", this::companion);
    }

    private Companion companion(ObjectReader reader) {
        String part = reading.named(reader, "part", Kind.COMPANION);
        if (!part.isEmpty()) {
            reading.mention(Kind.PART, part, reader.spot("part"));
        }
        Companion companion = new Companion(new PartNumber(part), needs.needs(reader), needs.expects(reader));
        if (reader.sound() && companion.needs().isEmpty() && companion.expects().isEmpty()) {
            reader.fault(
                    "neither needs nor expects",
                    "at least one of either",
                    "Remove the entry, or say what it needs or expects.");
        }
        return reading.sources().put(companion, reader.spot());
    }
}
