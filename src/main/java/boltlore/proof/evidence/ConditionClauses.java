package boltlore.proof.evidence;

import boltlore.catalogue.Condition;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * Conditions over options as clauses, each with a variable that holds exactly when the condition does (Tseitin, On the
 * complexity of derivation in propositional calculus, 1968).
 */
final class ConditionClauses {

    private final ValueVariables values;
    private final Clauses clauses;
    private final IdentityHashMap<Condition, Integer> known = new IdentityHashMap<>();

    ConditionClauses(ValueVariables values, Clauses clauses) {
        this.values = values;
        this.clauses = clauses;
    }

    /** The literal that stands for the condition. */
    int of(Condition condition) {
        Integer literal = known.get(condition);
        if (literal == null) {
            literal = translate(condition);
            known.put(condition, literal);
        }
        return literal;
    }

    private int translate(Condition condition) {
        if (condition instanceof Condition.Is is) {
            List<Integer> some = is.values().stream()
                    .map(value -> values.of(is.option(), value))
                    .toList();
            return some.size() == 1 ? some.get(0) : clauses.or(some);
        }
        if (condition instanceof Condition.All all) {
            return clauses.and(each(all.conditions()));
        }
        if (condition instanceof Condition.AnyOf any) {
            return clauses.or(each(any.conditions()));
        }
        if (condition instanceof Condition.Not not) {
            return -of(not.condition());
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }

    private List<Integer> each(List<Condition> conditions) {
        return conditions.stream().map(this::of).toList();
    }
}
