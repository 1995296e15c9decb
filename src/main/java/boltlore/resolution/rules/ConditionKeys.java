package boltlore.resolution.rules;

import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.measure.PositionName;
import boltlore.resolution.rules.Facts.CaseAsksEmpty;
import boltlore.resolution.rules.Facts.CaseAsksFilled;
import boltlore.resolution.rules.Facts.ConditionCase;
import boltlore.resolution.rules.Facts.ConditionKey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Gives each condition a key for the rules, and states the facts by which the rules judge what choices leave open. */
final class ConditionKeys {

    private final Choices choices;
    private final List<Object> facts = new ArrayList<>();
    private final Map<Condition, ConditionKey> keys = new HashMap<>();

    ConditionKeys(Choices choices) {
        this.choices = choices;
    }

    /** The facts about all conditions keyed so far, in the order of their keys. */
    List<Object> facts() {
        return facts;
    }

    /** {@link ConditionKey#ALWAYS}, {@link ConditionKey#NEVER}, or the key of what is left of the condition. */
    ConditionKey of(Condition condition) {
        if (condition.isAlways()) {
            return ConditionKey.ALWAYS;
        }
        Condition rest = Conditions.afterChoices(condition, choices);
        if (rest.isAlways()) {
            return ConditionKey.ALWAYS;
        }
        return Conditions.isNever(rest) ? ConditionKey.NEVER : keyOf(rest);
    }

    private ConditionKey keyOf(Condition rest) {
        ConditionKey known = keys.get(rest);
        if (known != null) {
            return known;
        }
        ConditionKey key = new ConditionKey(keys.size());
        keys.put(rest, key);
        int number = 0;
        for (ConditionCases.Case each : ConditionCases.of(rest).cases()) {
            facts.add(new ConditionCase(key, number));
            for (PositionName position : each.filled()) {
                facts.add(new CaseAsksFilled(key, number, position));
            }
            for (PositionName position : each.empty()) {
                facts.add(new CaseAsksEmpty(key, number, position));
            }
            number++;
        }
        return key;
    }
}
