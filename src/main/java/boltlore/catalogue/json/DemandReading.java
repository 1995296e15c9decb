package boltlore.catalogue.json;

import boltlore.catalogue.Demand;
import boltlore.catalogue.FoundState;
import boltlore.catalogue.LimitRule;
import boltlore.json.Allowed;
import boltlore.json.ObjectReader;
import boltlore.json.Range;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Reads what a test asks of its reading: a number or two, a state, or a rule by which each kit's limit is worked out. */
final class DemandReading {

    private static final Range NUMBER = Range.between(-1_000_000_000, 1_000_000_000);
    private static final Range PERCENT = Range.above(0, 100);
    static final Allowed<FoundState> STATES = Allowed.of(FoundState.values(), FoundState::written);
    static final Allowed<LimitRule> RULES = Allowed.of(LimitRule.values(), LimitRule::written);

    Demand read(ObjectReader reader) {
        FoundState state = reader.findOneOf("state", STATES);
        LimitRule rule = reader.findOneOf("calculated", RULES);
        BigDecimal within = reader.findDecimal("withinPercent", PERCENT);
        BigDecimal least = reader.findDecimal("atLeast", NUMBER);
        BigDecimal most = reader.findDecimal("atMost", NUMBER);
        reader.oneWay("atLeast", "atMost", "atLeast atMost", "state", "calculated", "calculated withinPercent");
        if (reader.has("state")) {
            return new Demand.InState(state == null ? FoundState.OPEN : state);
        }
        return reader.has("calculated")
                ? calculated(reader, rule == null ? LimitRule.BONDING : rule, within)
                : numbers(reader, least, most);
    }

    private static Demand calculated(ObjectReader reader, LimitRule rule, @Nullable BigDecimal within) {
        boolean around = rule.way() == LimitRule.Way.AROUND;
        if (!around && within != null) {
            reader.faultAt(
                    "withinPercent", "'withinPercent' of a limit", "it with a rule that gives a target", "Remove it.");
        }
        if (around && within == null && !reader.has("withinPercent")) {
            reader.fault("no 'withinPercent'", "the key 'withinPercent'", "Add it.");
        }
        return new Demand.Computed(rule, within == null ? BigDecimal.ZERO : within);
    }

    private static Demand numbers(ObjectReader reader, @Nullable BigDecimal least, @Nullable BigDecimal most) {
        if (least != null && most != null) {
            between(reader, least, most);
            return new Demand.Between(least, most);
        }
        return least != null ? new Demand.AtLeast(least) : new Demand.AtMost(most == null ? BigDecimal.ONE : most);
    }

    private static void between(ObjectReader reader, BigDecimal least, BigDecimal most) {
        if (least.compareTo(most) > 0) {
            reader.fault("'atLeast' above 'atMost'", "'atLeast' no larger than 'atMost'", "Exchange them.");
        }
    }
}
