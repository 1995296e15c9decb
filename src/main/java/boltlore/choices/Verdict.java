package boltlore.choices;

import boltlore.catalogue.Condition;
import java.util.List;
import java.util.Optional;

/** What a condition over options comes to under a partial choice (Kleene's three values). */
enum Verdict {
    HOLDS,
    OPEN,
    FAILS;

    static Verdict of(Condition condition, Choices choices) {
        if (condition instanceof Condition.Is is) {
            Optional<String> value = choices.value(is.option());
            return value.isEmpty() ? OPEN : is.values().contains(value.get()) ? HOLDS : FAILS;
        }
        if (condition instanceof Condition.All all) {
            return strongest(all.conditions(), choices, FAILS, HOLDS);
        }
        if (condition instanceof Condition.AnyOf any) {
            return strongest(any.conditions(), choices, HOLDS, FAILS);
        }
        if (condition instanceof Condition.Not not) {
            return of(not.condition(), choices).opposite();
        }
        throw new IllegalArgumentException("'filled' stands in a condition over options: " + condition);
    }

    private static Verdict strongest(List<Condition> conditions, Choices choices, Verdict decisive, Verdict none) {
        Verdict result = none;
        for (Condition condition : conditions) {
            Verdict verdict = of(condition, choices);
            if (verdict == decisive) {
                return decisive;
            }
            result = verdict == OPEN ? OPEN : result;
        }
        return result;
    }

    private Verdict opposite() {
        return this == OPEN ? OPEN : this == HOLDS ? FAILS : HOLDS;
    }
}
