package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.choices.Choices;
import java.util.IdentityHashMap;

/** What conditions over options come to in one order; a condition object that several others share is judged once. */
public final class Truth {

    private final Choices choices;
    private final IdentityHashMap<Condition, Boolean> known = new IdentityHashMap<>();

    public Truth(Choices choices) {
        this.choices = choices;
    }

    public boolean of(Condition condition) {
        Boolean truth = known.get(condition);
        if (truth == null) {
            truth = judge(condition);
            known.put(condition, truth);
        }
        return truth;
    }

    private boolean judge(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return is.values().contains(choices.value(is.option()).orElse(""));
        }
        if (condition instanceof Condition.All all) {
            return all.conditions().stream().allMatch(this::of);
        }
        if (condition instanceof Condition.AnyOf any) {
            return any.conditions().stream().anyMatch(this::of);
        }
        if (condition instanceof Condition.Not not) {
            return !of(not.condition());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }
}
