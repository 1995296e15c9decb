package boltlore.catalogue.json;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Market;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.Supply;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.util.List;
import java.util.Map;

/** markets.json: markets with their mains, inlets and sockets, and the supplies that customers have at home. */
final class MarketsFile {

    /** A conversion that must become lighter, or may become three times as heavy, is a slip of the pen. */
    private static final Range MOST_PERCENT = Range.between(50, 300);

    private final Reading reading;
    private final FactsReading facts;

    MarketsFile(Reading reading) {
        this.reading = reading;
        this.facts = new FactsReading(reading);
    }

    Map<String, Market> markets(ObjectReader reader) {
        return Keyed.by(reader.findObjects("markets", this::market), Market::name);
    }

    Map<String, Supply> supplies(ObjectReader reader) {
        return Keyed.by(reader.findObjects("supplies", this::supply), Supply::name);
    }

    private Market market(ObjectReader reader) {
        String name = reading.named(reader, "market", Kind.MARKET);
        String says = reader.text("says");
        List<String> languages = reader.findTexts("languages", TextShape.LANGUAGE, (language, location) -> language);
        Facts own = reader.findObject("facts", facts::read).orElse(Facts.NONE);
        if (reader.sound()) {
            RoleFacts.demand(reader, "market", own, "phases", "volts");
        }
        MassLimit massLimit =
                reader.findObject("massLimit", MarketsFile::massLimit).orElse(null);
        return new Market(name, says, languages, own.or(FactsReading.languages(languages)), massLimit);
    }

    private static MassLimit massLimit(ObjectReader reader) {
        return new MassLimit(reader.decimal("maxPercent", MOST_PERCENT), reader.text("because"));
    }

    private Supply supply(ObjectReader reader) {
        String name = reading.named(reader, "supply", Kind.SUPPLY);
        String says = reader.text("says");
        Facts own = reader.findObject("facts", facts::read).orElse(Facts.NONE);
        if (reader.sound()) {
            RoleFacts.demand(reader, "supply", own, "phases", "volts", "amps");
        }
        return new Supply(name, says, own);
    }
}
