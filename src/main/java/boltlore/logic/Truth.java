package boltlore.logic;

import boltlore.catalogue.BottomUp;
import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import java.util.IdentityHashMap;

/** What conditions over options come to in one order; a condition object that several others share is judged once. */
public final class Truth {

    private final Choices choices;
    private final BottomUp<Condition, Boolean> known =
            new BottomUp<>(new IdentityHashMap<>(), Condition::parts, this::judge);

    public Truth(Choices choices) {
        this.choices = choices;
    }

    public boolean of(Condition condition) {
        return known.of(condition);
    }

    private boolean judge(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return is.values().contains(choices.value(is.option()).orElse(""));
        }
        if (condition instanceof Condition.All all) {
            return all.conditions().stream().allMatch(known::of);
        }
        if (condition instanceof Condition.AnyOf any) {
            return any.conditions().stream().anyMatch(known::of);
        }
        if (condition instanceof Condition.Not not) {
            return !known.of(not.condition());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }
}
