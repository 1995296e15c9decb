package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.logicng.collections.LNGIntVector;
import org.logicng.datastructures.Tristate;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;
import org.logicng.handlers.SATHandler;
import org.logicng.solvers.MiniSat;
import org.logicng.solvers.SolverState;
import org.logicng.solvers.sat.MiniSatConfig;

/**
 * All complete choices of a family that break none of the given limits, as one incremental solver: asks whether some of
 * them fulfil further conditions, and shows one that does. Not safe to share between threads.
 */
public final class ValidOrders {

    private final FormulaFactory formulas = new FormulaFactory();
    private final Family family;
    private final OptionVariables variables;
    private final ConditionFormulas conditions;
    private final MiniSat solver;
    private final IdentityHashMap<Condition, Literal> selectors = new IdentityHashMap<>();
    private final List<Condition> selected = new ArrayList<>();
    private final Deadline deadline;
    private final UntilDeadline untilDeadline;
    private final ValueLiterals values;
    private final OpenValues openValues;
    private int freshVariables;

    public ValidOrders(Family family, List<Limit> limits) {
        this(family, limits, Deadline.NONE);
    }

    public ValidOrders(Family family) {
        this(family, family.limits(), Deadline.NONE);
    }

    public ValidOrders(Family family, List<Limit> limits, Deadline deadline) {
        this.family = family;
        this.deadline = deadline;
        this.untilDeadline = new UntilDeadline(deadline);
        variables = new OptionVariables(family, formulas);
        conditions = new ConditionFormulas(formulas, variables);
        MiniSatConfig config = MiniSatConfig.builder()
                .cnfMethod(MiniSatConfig.CNFMethod.PG_ON_SOLVER)
                .build();
        PropagatingSolver core = new PropagatingSolver(config);
        solver = new MiniSat(formulas, core);
        solver.add(variables.exactlyOneValueEach());
        for (Limit limit : limits) {
            solver.add(conditions.of(limit.forbids()).negate());
        }
        Variable either = fresh();
        variables.all().forEach(variable -> solver.add(formulas.or(variable, either)));
        values = new ValueLiterals(variables, core);
        openValues = new OpenValues(
                this, values, family, limits.stream().map(Limit::forbids).toList());
    }

    /** Whether some valid order fulfils all of these conditions, which range over options alone. */
    public boolean some(Condition... also) {
        return some(List.of(also));
    }

    public boolean some(Collection<Condition> also) {
        return someGiven(selectors(also));
    }

    boolean someGiven(List<Literal> given) {
        Tristate answer = answer(given, untilDeadline);
        if (answer == Tristate.UNDEF) {
            throw new Deadline.Passed();
        }
        return answer == Tristate.TRUE;
    }

    /**
     * The same, where an order that is found has many of these values, the first ones rather than the last. Values are
     * tried in that order as long as this is no trouble: the solver's own order finds its way out of any.
     */
    boolean someGiven(List<Literal> given, List<Choice> rather) {
        values.tryFirst(rather);
        Tristate answer = answer(given, new WhileEasy(deadline));
        values.tryAny();
        return answer == Tristate.UNDEF ? someGiven(given) : answer == Tristate.TRUE;
    }

    private Tristate answer(List<Literal> given, SATHandler handler) {
        deadline.check();
        return given.isEmpty() ? solver.sat(handler) : solver.sat(handler, given);
    }

    /** The values that stand in some valid order which fulfils all of these conditions; none where there is no order. */
    public Set<Choice> values(Collection<Condition> given) {
        List<Literal> known = selectors(given);
        return someGiven(known) ? openValues.of(given, known) : Set.of();
    }

    /** The values that stand in some valid order with all of these literals, which may tell any values apart. */
    Set<Choice> valuesGiven(List<Literal> known) {
        return someGiven(known) ? openValues.of(known) : Set.of();
    }

    List<Literal> and(List<Literal> known, Choice choice) {
        List<Literal> all = new ArrayList<>(known);
        all.add(variables.of(choice.option(), choice.value()));
        return all;
    }

    /**
     * Those of the conditions that the answer 'none' to the last question rests on: already they leave no order. Not
     * always the fewest.
     */
    public List<Condition> against(Collection<Condition> asked) {
        Set<Literal> refuted = refuted();
        return asked.stream()
                .filter(condition -> refuted.contains(selector(condition)))
                .toList();
    }

    /** Those of the literals given with the last question that its answer 'none' rests on. */
    Set<Literal> refuted() {
        LNGIntVector conflict = solver.underlyingSolver().conflict();
        Set<Literal> refuted = new LinkedHashSet<>();
        for (int i = 0; i < conflict.size(); i++) {
            int literal = conflict.get(i);
            Variable variable = formulas.variable(solver.underlyingSolver().nameForIdx(literal >> 1));
            refuted.add((literal & 1) == 1 ? variable : variable.negate());
        }
        return refuted;
    }

    /** Does something that teaches the solver much, and lets it forget all of that afterwards. */
    <T> T aside(Supplier<T> work) {
        SolverState before = solver.saveState();
        int known = selected.size();
        try {
            return work.get();
        } finally {
            solver.loadState(before);
            List<Condition> since = selected.subList(known, selected.size());
            since.forEach(selectors::remove);
            since.clear();
        }
    }

    List<Literal> selectors(Collection<Condition> given) {
        return given.stream().map(this::selector).toList();
    }

    FormulaFactory formulas() {
        return formulas;
    }

    Formula formula(Condition condition) {
        return conditions.of(condition);
    }

    Variable fresh() {
        return formulas.variable("t" + freshVariables++);
    }

    void add(Formula formula) {
        solver.add(formula);
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
        Map<OptionName, String> chosen = new HashMap<>();
        values.last().forEach(choice -> chosen.put(choice.option(), choice.value()));
        return Choices.of(family, chosen);
    }

    /** A literal that, when assumed, makes the condition hold; nothing is said of the other direction. */
    Literal selector(Condition condition) {
        if (condition instanceof Condition.Is is && is.values().size() == 1) {
            return variables.of(is.option(), is.values().first());
        }
        Literal known = selectors.get(condition);
        if (known != null) {
            return known;
        }
        Formula formula = conditions.of(condition);
        Literal selector = selectorOf(formula);
        selectors.put(condition, selector);
        selected.add(condition);
        return selector;
    }

    /** A literal that, when assumed, makes the formula hold. */
    Literal selectorOf(Formula formula) {
        if (formula instanceof Literal literal) {
            return literal;
        }
        Variable fresh = fresh();
        solver.add(formulas.or(fresh.negate(), formula));
        return fresh;
    }
}
