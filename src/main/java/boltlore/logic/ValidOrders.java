package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choices;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.logicng.datastructures.Tristate;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;
import org.logicng.solvers.MiniSat;
import org.logicng.solvers.sat.MiniSatConfig;

/**
 * All complete choices of a family that break none of the given limits, as one incremental solver: asks whether some of
 * them fulfil further conditions, and shows one that does. Not safe to share between threads.
 */
public final class ValidOrders {

    private final FormulaFactory formulas = new FormulaFactory();
    private final OptionVariables variables;
    private final ConditionFormulas conditions;
    private final MiniSat solver;
    private final IdentityHashMap<Condition, Literal> selectors = new IdentityHashMap<>();
    private final Deadline deadline;

    public ValidOrders(Family family, List<Limit> limits) {
        this(family, limits, Deadline.NONE);
    }

    public ValidOrders(Family family) {
        this(family, family.limits(), Deadline.NONE);
    }

    public ValidOrders(Family family, List<Limit> limits, Deadline deadline) {
        this.deadline = deadline;
        variables = new OptionVariables(family, formulas);
        conditions = new ConditionFormulas(formulas, variables);
        MiniSatConfig config = MiniSatConfig.builder()
                .cnfMethod(MiniSatConfig.CNFMethod.PG_ON_SOLVER)
                .build();
        solver = MiniSat.miniSat(formulas, config);
        solver.add(variables.exactlyOneValueEach());
        for (Limit limit : limits) {
            solver.add(conditions.of(limit.forbids()).negate());
        }
        variables.all().forEach(variable -> solver.add(formulas.or(variable, variable.negate())));
    }

    /** Whether some valid order fulfils all of these conditions, which range over options alone. */
    public boolean some(Condition... also) {
        return some(List.of(also));
    }

    public boolean some(Collection<Condition> also) {
        List<Literal> assumed = new ArrayList<>(also.size());
        for (Condition condition : also) {
            assumed.add(selector(condition));
        }
        deadline.check();
        Tristate answer = assumed.isEmpty() ? solver.sat() : solver.sat(assumed);
        return answer == Tristate.TRUE;
    }

    /** Whether every valid order fulfils the condition. */
    public boolean every(Condition condition) {
        return !some(new Condition.Not(condition));
    }

    /** A valid order that fulfils all of these conditions, if there is one. */
    public Optional<Choices> witness(Collection<Condition> also) {
        return some(also) ? Optional.of(lastFound()) : Optional.empty();
    }

    public Optional<Choices> witness(Condition... also) {
        return witness(List.of(also));
    }

    /** The order that the last question with the answer 'some' has found. */
    Choices lastFound() {
        return variables.choices(solver.model(variables.all()));
    }

    /** A literal that, when assumed, makes the condition hold; nothing is said of the other direction. */
    private Literal selector(Condition condition) {
        Literal known = selectors.get(condition);
        if (known != null) {
            return known;
        }
        Formula formula = conditions.of(condition);
        Literal selector = formula instanceof Literal literal ? literal : selectorOf(formula);
        selectors.put(condition, selector);
        return selector;
    }

    private Literal selectorOf(Formula formula) {
        Variable fresh = formulas.variable("s" + selectors.size());
        solver.add(formulas.or(fresh.negate(), formula));
        return fresh;
    }
}
