package boltlore.logic;

import boltlore.catalogue.Condition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Disjunctions without what never holds, and without what always does. */
public final class Any {

    /** Holds for no order. */
    public static final Condition NEVER = new Condition.AnyOf(List.of());

    private Any() {}

    /** What holds where the condition does not. */
    public static Condition but(Condition condition) {
        if (condition.isAlways()) {
            return NEVER;
        }
        return condition.equals(NEVER) ? Condition.ALWAYS : new Condition.Not(condition);
    }

    public static Condition of(Condition... conditions) {
        return of(List.of(conditions));
    }

    public static Condition of(List<Condition> conditions) {
        Set<Condition> met = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Condition> rest = new ArrayList<>();
        for (Condition condition : conditions) {
            if (condition.isAlways()) {
                return Condition.ALWAYS;
            }
            if (!condition.equals(NEVER) && met.add(condition)) {
                rest.add(condition);
            }
        }
        return rest.size() == 1 ? rest.get(0) : new Condition.AnyOf(rest);
    }
}
