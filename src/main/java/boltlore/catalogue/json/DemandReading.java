package boltlore.catalogue.json;

import boltlore.catalogue.Demand;
import boltlore.catalogue.FoundState;
import boltlore.catalogue.LimitRule;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.math.BigDecimal;
import java.util.List;

/** Reads what a test asks of its reading: a number or two, a state, or a rule by which each kit's limit is worked out. */
final class DemandReading {

    private static final Range NUMBER = Range.between(-1_000_000_000, 1_000_000_000);
    private static final Range PERCENT = Range.above(0, 100);
    private static final Allowed<FoundState> STATES = Allowed.of(FoundState.values(), FoundState::written);
    private static final Allowed<LimitRule> RULES = Allowed.of(LimitRule.values(), LimitRule::written);
    private static final String WAYS = "'atLeast', 'atMost', both of them, 'state' or 'calculated'";

    Demand read(ObjectReader reader) {
        if (reader.has("state")) {
            return alone(reader, "state", new Demand.InState(reader.oneOf("state", STATES)));
        }
        return reader.has("calculated") ? reckoned(reader) : numbers(reader);
    }

    private static Demand alone(ObjectReader reader, String key, Demand demand) {
        for (String other : List.of("atLeast", "atMost", "state", "calculated", "withinPercent")) {
            boolean belongs = other.equals(key) || (key.equals("calculated") && other.equals("withinPercent"));
            if (reader.find(other).isPresent() && !belongs) {
                reader.faultAt(other, "'" + other + "' beside '" + key + "'", WAYS, "Remove one of the two.");
            }
        }
        return demand;
    }

    private static Demand reckoned(ObjectReader reader) {
        LimitRule rule = reader.oneOf("calculated", RULES);
        boolean around = rule.way() == LimitRule.Way.AROUND;
        if (!around && reader.find("withinPercent").isPresent()) {
            reader.faultAt(
                    "withinPercent", "'withinPercent' of a limit", "it with a rule that gives a target", "Remove it.");
        }
        BigDecimal within = around ? reader.decimal("withinPercent", PERCENT) : BigDecimal.ZERO;
        return alone(reader, "calculated", new Demand.Reckoned(rule, within));
    }

    private static Demand numbers(ObjectReader reader) {
        BigDecimal least = reader.findDecimal("atLeast", NUMBER);
        BigDecimal most = reader.findDecimal("atMost", NUMBER);
        if (least != null && most != null) {
            between(reader, least, most);
            return new Demand.Between(least, most);
        }
        if (least == null && most == null && reader.sound()) {
            reader.fault("a limit that says nothing", WAYS, "");
        }
        return least != null ? new Demand.AtLeast(least) : new Demand.AtMost(most == null ? BigDecimal.ONE : most);
    }

    private static void between(ObjectReader reader, BigDecimal least, BigDecimal most) {
        if (least.compareTo(most) > 0) {
            reader.fault("'atLeast' above 'atMost'", "'atLeast' no larger than 'atMost'", "Exchange them.");
        }
    }
}
