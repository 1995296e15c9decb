package boltlore.logic;

import boltlore.catalogue.Condition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Conjunctions without what always holds, and without what never does. */
public final class All {

    private All() {}

    public static Condition of(Condition... conditions) {
        return of(List.of(conditions));
    }

    public static Condition of(List<Condition> conditions) {
        Set<Condition> met = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Condition> rest = new ArrayList<>();
        for (Condition condition : conditions) {
            if (condition.equals(Any.NEVER)) {
                return Any.NEVER;
            }
            if (!condition.isAlways() && met.add(condition)) {
                rest.add(condition);
            }
        }
        return rest.size() == 1 ? rest.get(0) : new Condition.All(rest);
    }
}
