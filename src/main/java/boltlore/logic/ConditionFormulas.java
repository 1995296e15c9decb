package boltlore.logic;

import boltlore.catalogue.Condition;
import java.util.IdentityHashMap;
import java.util.List;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;

/** Conditions over options as formulas; a condition object that several others share is translated once. */
final class ConditionFormulas {

    private final FormulaFactory formulas;
    private final OptionVariables variables;
    private final IdentityHashMap<Condition, Formula> known = new IdentityHashMap<>();

    ConditionFormulas(FormulaFactory formulas, OptionVariables variables) {
        this.formulas = formulas;
        this.variables = variables;
    }

    /** @throws IllegalArgumentException where 'filled' has not been unfolded before */
    Formula of(Condition condition) {
        Formula formula = known.get(condition);
        if (formula == null) {
            formula = translate(condition);
            known.put(condition, formula);
        }
        return formula;
    }

    private Formula translate(Condition condition) {
        if (condition instanceof Condition.Is is) {
            return formulas.or(is.values().stream()
                    .map(value -> variables.of(is.option(), value))
                    .toList());
        }
        if (condition instanceof Condition.All all) {
            return formulas.and(each(all.conditions()));
        }
        if (condition instanceof Condition.AnyOf any) {
            return formulas.or(each(any.conditions()));
        }
        if (condition instanceof Condition.Not not) {
            return formulas.not(of(not.condition()));
        }
        throw new IllegalArgumentException("'filled' is unfolded first: " + condition);
    }

    private List<Formula> each(List<Condition> conditions) {
        return conditions.stream().map(this::of).toList();
    }
}
