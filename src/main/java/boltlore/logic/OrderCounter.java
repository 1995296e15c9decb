package boltlore.logic;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.logicng.knowledgecompilation.bdds.BDDFactory;

/**
 * Counts the valid orders of a family exactly, by a binary decision diagram over its option values; gives up, and says
 * so, when the diagram grows beyond its limit. Not safe to share between threads, and of no use any more once the time was
 * up.
 */
public final class OrderCounter {

    /** Nodes that the diagram may take before counting is given up: about 100 MB. */
    static final int MOST_NODES = 2_000_000;

    /** A small family's diagram is built before a large table of known results is laid out. */
    private static final int SMALL = 64;

    private final FormulaFactory formulas = new FormulaFactory();
    private final OptionVariables variables;
    private final ConditionFormulas conditions;
    private final BoundedKernel kernel;
    private final Deadline deadline;
    private final Count.GivenUp givenUp = new Count.GivenUp("counting them outgrew the memory set aside for it");
    private final @Nullable BDD valid;

    public OrderCounter(Family family) {
        this(family, family.limits(), Deadline.NONE, false);
    }

    /** @param backwards whether the diagram orders the options the other way round, for a second, independent count */
    public OrderCounter(Family family, List<Limit> limits, Deadline deadline, boolean backwards) {
        this.deadline = deadline;
        variables = new OptionVariables(family, formulas);
        conditions = new ConditionFormulas(formulas, variables);
        List<Condition> forbidden = limits.stream().map(Limit::forbids).toList();
        List<OptionName> order = new ArrayList<>(OptionOrder.of(family, forbidden));
        if (backwards) {
            Collections.reverse(order);
        }
        List<Variable> ordered = new ArrayList<>();
        for (OptionName name : order) {
            ordered.addAll(variablesOf(family.option(name).orElseThrow()));
        }
        int nodes = Math.max(ordered.size() <= SMALL ? 10_000 : 100_000, ordered.size() * 50);
        kernel = new BoundedKernel(formulas, ordered, nodes, nodes, MOST_NODES, deadline);
        valid = deeply(() -> unlessOutgrown(() -> valid(family, forbidden)));
    }

    private List<Variable> variablesOf(Option option) {
        List<Variable> all = new ArrayList<>();
        for (OptionValue value : option.values()) {
            Variable variable = variables.of(option.name(), value.value()).variable();
            if (!all.contains(variable)) {
                all.add(variable);
            }
        }
        return all;
    }

    private static <T> @Nullable T unlessOutgrown(Supplier<@Nullable T> diagram) {
        try {
            return diagram.get();
        } catch (BoundedKernel.Outgrown tooLarge) {
            return null;
        }
    }

    private BDD valid(Family family, List<Condition> forbidden) {
        BDD all = BDDFactory.build(formulas.verum(), kernel);
        for (Option option : family.options()) {
            all = all.and(exactlyOne(option));
        }
        Comparator<Formula> lowestFirst = Comparator.comparingInt(formula ->
                formula.variables().stream().mapToInt(kernel::getLevel).max().orElse(0));
        List<Formula> limits = forbidden.stream()
                .map(condition -> conditions.of(condition).negate())
                .sorted(lowestFirst.reversed())
                .toList();
        for (Formula limit : limits) {
            kernel.check();
            all = all.and(BDDFactory.build(limit, kernel));
        }
        return all;
    }

    private BDD exactlyOne(Option option) {
        BDD none = BDDFactory.build(formulas.verum(), kernel);
        if (option.values().size() == 2) {
            return none;
        }
        BDD one = BDDFactory.build(formulas.falsum(), kernel);
        List<Variable> values = variablesOf(option);
        for (int i = values.size() - 1; i >= 0; i--) {
            BDD is = BDDFactory.build(values.get(i), kernel);
            BDD isNot = is.negate();
            one = is.and(none).or(isNot.and(one));
            none = isNot.and(none);
        }
        return one;
    }

    /** How many valid orders there are. */
    public Count all() {
        return count(() -> valid);
    }

    /** How many valid orders fulfil the condition, which ranges over options alone. */
    public Count with(Condition condition) {
        BDD every = valid;
        if (every == null) {
            return givenUp;
        }
        deadline.check();
        return count(() -> every.and(BDDFactory.build(conditions.of(condition), kernel)));
    }

    private Count count(Supplier<@Nullable BDD> diagram) {
        return deeply(() -> {
            BDD bdd = unlessOutgrown(diagram);
            return bdd == null ? givenUp : new Count.Exactly(bdd.modelCount());
        });
    }

    private <T extends @Nullable Object> T deeply(Supplier<T> work) {
        try {
            return DeepStack.call(deadline, work);
        } catch (Deadline.Passed e) {
            kernel.abandon();
            throw e;
        }
    }
}
