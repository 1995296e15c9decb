package boltlore.scale;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.logic.Deadline;
import boltlore.measure.OptionName;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A general library for constraint problems (Choco-solver): a variable of numbers an option, a truth a condition, and a sum
 * where the cheapest order is asked for. Its search branches on the options, as their values settle all else.
 */
final class GeneralSolver implements Asked.Way {

    private final Asked asked;
    private final long limitMs;
    private final Stated plain;
    private final Stated priced;

    GeneralSolver(Asked asked, long limitMs) {
        this.asked = asked;
        this.limitMs = limitMs;
        plain = new Stated(asked, limitMs);
        priced = new Stated(asked, limitMs);
        priced.cost();
    }

    @Override
    public Set<Choice> open(List<Choice> kept) {
        return plain.keeping(kept, () -> {
            Set<Choice> open = new HashSet<>();
            long until = System.nanoTime() + limitMs * 1_000_000;
            for (Option option : asked.family().options()) {
                for (String value : option.valueNames()) {
                    Choice choice = new Choice(option.name(), value);
                    if (System.nanoTime() > until) {
                        throw new Deadline.Passed("its time was up");
                    }
                    if (!open.contains(choice)) {
                        plain.keeping(List.of(choice), () -> {
                            if (plain.next()) {
                                open.addAll(plain.found());
                            }
                            return open;
                        });
                    }
                }
            }
            return open;
        });
    }

    @Override
    public boolean possible(List<Choice> kept) {
        return plain.keeping(kept, () -> plain.next());
    }

    @Override
    public OptionalLong cheapest(List<Choice> kept) {
        return priced.keeping(kept, () -> {
            IntVar cost = priced.cost();
            priced.model.setObjective(Model.MINIMIZE, cost);
            OptionalLong least = OptionalLong.empty();
            while (priced.next()) {
                least = OptionalLong.of(cost.getValue());
            }
            priced.model.clearObjective();
            return least;
        });
    }

    @Override
    public BigInteger count(List<Choice> kept) {
        return plain.keeping(kept, () -> {
            long count = 0;
            while (plain.next()) {
                count++;
            }
            return BigInteger.valueOf(count);
        });
    }

    /** Options and limits as a model. */
    private static final class Stated {

        private final Model model = new Model();
        private final Map<OptionName, Option> options = new LinkedHashMap<>();
        private final Map<OptionName, IntVar> variables = new LinkedHashMap<>();
        private final Map<Condition, BoolVar> known = new HashMap<>();
        private final Asked asked;
        private final long limitMs;
        private IntVar cost;

        Stated(Asked asked, long limitMs) {
            this.asked = asked;
            this.limitMs = limitMs;
            for (Option option : asked.family().options()) {
                options.put(option.name(), option);
                variables.put(
                        option.name(),
                        model.intVar(option.name().text(), 0, option.values().size() - 1));
            }
            asked.forbidden()
                    .forEach(limit -> model.arithm(truth(limit), "=", 0).post());
        }

        private BoolVar truth(Condition condition) {
            BoolVar before = known.get(condition);
            if (before == null) {
                before = made(condition);
                known.put(condition, before);
            }
            return before;
        }

        private BoolVar made(Condition condition) {
            if (condition instanceof Condition.Is is) {
                List<String> names = options.get(is.option()).valueNames();
                int[] values = is.values().stream().mapToInt(names::indexOf).toArray();
                IntVar option = variables.get(is.option());
                return values.length == 1
                        ? model.isEq(option, values[0])
                        : model.member(option, values).reify();
            }
            BoolVar[] parts = condition.parts().stream().map(this::truth).toArray(BoolVar[]::new);
            if (condition instanceof Condition.Not) {
                return parts[0].not();
            }
            boolean all = condition instanceof Condition.All;
            if (parts.length == 0) {
                return model.boolVar(all);
            }
            BoolVar whole = model.boolVar();
            if (all) {
                model.addClausesBoolAndArrayEqVar(parts, whole);
            } else {
                model.addClausesBoolOrArrayEqVar(parts, whole);
            }
            return whole;
        }

        IntVar cost() {
            if (cost == null) {
                BoolVar[] whens =
                        asked.cents().keySet().stream().map(this::truth).toArray(BoolVar[]::new);
                int[] cents = asked.cents().values().stream()
                        .mapToInt(Math::toIntExact)
                        .toArray();
                cost = model.intVar("cost", 0, java.util.Arrays.stream(cents).sum(), true);
                model.scalar(whens, cents, "=", cost).post();
            }
            return cost;
        }

        /** What is asked while the choices are kept, from the beginning of a search. */
        <T> T keeping(List<Choice> kept, Supplier<T> question) {
            Solver solver = model.getSolver();
            Constraint[] settled = kept.stream()
                    .map(choice -> model.arithm(
                            variables.get(choice.option()),
                            "=",
                            options.get(choice.option()).valueNames().indexOf(choice.value())))
                    .toArray(Constraint[]::new);
            solver.hardReset();
            solver.setSearch(Search.domOverWDegSearch(variables.values().toArray(IntVar[]::new)));
            solver.limitTime(limitMs);
            model.post(settled);
            try {
                return question.get();
            } finally {
                solver.hardReset();
                model.unpost(settled);
            }
        }

        /**
         * Whether there is a further solution.
         *
         * @throws Deadline.Passed where it was not found, nor ruled out, within the time
         */
        boolean next() {
            boolean found = model.getSolver().solve();
            if (!found && model.getSolver().isStopCriterionMet()) {
                throw new Deadline.Passed("its time was up");
            }
            return found;
        }

        Set<Choice> found() {
            Set<Choice> found = new HashSet<>();
            options.forEach((name, option) -> found.add(
                    new Choice(name, option.valueNames().get(variables.get(name).getValue()))));
            return found;
        }
    }
}
