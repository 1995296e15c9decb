package boltlore.catalogue.json;

import boltlore.catalogue.Facts;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.util.List;

/** The facts of option values, markets and supplies. */
final class FactsReading {

    private final Reading reading;

    FactsReading(Reading reading) {
        this.reading = reading;
    }

    static Facts languages(List<String> languages) {
        return new Facts(null, null, null, null, List.of(), List.of(), languages, null, null, null, null);
    }

    Facts read(ObjectReader reader) {
        Integer phases = reader.findWhole("phases", 1, 3);
        if (phases != null && phases == 2) {
            reader.faultAt("phases", "2", "1 or 3 phases", "Split phase counts as one phase.");
        }
        return new Facts(
                phases,
                reader.findDecimal("amps", Range.above(0, 1000)),
                reader.findDecimal("volts", Range.above(0, 1500)),
                reader.findText("socket", TextShape.NAME).orElse(null),
                names(reader, "sockets"),
                names(reader, "inlets"),
                reader.findTexts("languages", TextShape.LANGUAGE, (language, location) -> language),
                reader.findTruth("twoWay"),
                reader.findDecimal("exportKw", Range.above(0, 1000)),
                reader.findDecimal("kw", Range.above(0, 1000)),
                reading.findMentioned(reader, "finish", Kind.FINISH));
    }

    private static List<String> names(ObjectReader reader, String key) {
        return reader.findTexts(key, TextShape.NAME, (name, location) -> name);
    }
}
