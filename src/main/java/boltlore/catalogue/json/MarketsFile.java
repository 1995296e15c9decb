package boltlore.catalogue.json;

import boltlore.catalogue.Facts;
import boltlore.catalogue.Market;
import boltlore.catalogue.MarketCondition;
import boltlore.catalogue.MassLimit;
import boltlore.catalogue.Supply;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import boltlore.json.TextShape;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** markets.json: markets with their mains, inlets and sockets, and the supplies that customers have at home. */
final class MarketsFile {

    /** A conversion that must become lighter, or may become three times as heavy, is a slip of the pen. */
    private static final Range MOST_PERCENT = Range.between(50, 300);

    /** Of what was computed; more than a tenth decides nothing any more. */
    private static final Range TOLERANCE_PERCENT = Range.between(0, 10);

    private static final Range POWER_PERCENT = Range.above(0, 1_000);
    private static final Allowed<MarketCondition.Judge> JUDGES = Allowed.of(
            MarketCondition.Judge.values(),
            judge -> judge.name().toLowerCase(Locale.ROOT).replace('_', '-'));

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
        BigDecimal tolerance = reader.findDecimal("tolerancePercent", TOLERANCE_PERCENT);
        return new MassLimit(
                reader.decimal("maxPercent", MOST_PERCENT),
                tolerance == null ? MassLimit.USUAL_TOLERANCE_PERCENT : tolerance,
                reader.findText("country", Shapes.COUNTRY).orElse(""),
                reader.text("because"),
                reader.findObjects("conditions", MarketsFile::condition));
    }

    private static MarketCondition condition(ObjectReader reader) {
        MarketCondition condition = new MarketCondition(
                reader.oneOf("condition", JUDGES),
                reader.text("says"),
                reader.findDecimal("minPercent", POWER_PERCENT),
                reader.findDecimal("maxPercent", POWER_PERCENT),
                reader.findWhole("minYears", 1, 100));
        if (reader.sound()) {
            figures(condition, reader);
        }
        return condition;
    }

    /** Power has shares of a power, age has years, and the others neither. */
    private static void figures(MarketCondition condition, ObjectReader reader) {
        boolean percent = condition.leastPercent() != null || condition.mostPercent() != null;
        if (percent != (condition.judge() == MarketCondition.Judge.POWER)) {
            reader.fault(
                    percent
                            ? "a share of power in a condition on something else"
                            : "a condition on power without a share",
                    "'minPercent', 'maxPercent' or both with 'power' alone",
                    "");
        }
        boolean years = condition.leastYears() != null;
        if (years != (condition.judge() == MarketCondition.Judge.AGE)) {
            reader.fault(
                    years ? "years in a condition on something else" : "a condition on age without years",
                    "'minYears' with 'age' alone",
                    "");
        }
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
