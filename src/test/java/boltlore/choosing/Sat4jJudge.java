package boltlore.choosing;

import boltlore.catalogue.Condition;
import boltlore.catalogue.Family;
import boltlore.catalogue.Limit;
import boltlore.catalogue.Option;
import boltlore.choices.Choice;
import boltlore.choices.Choices;
import boltlore.choices.Conditions;
import boltlore.choices.Mentions;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import org.sat4j.core.VecInt;
import org.sat4j.minisat.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.IGroupSolver;
import org.sat4j.specs.IVecInt;
import org.sat4j.tools.AllMUSes;

/**
 * All minimal conflicts by another solver and another translation: each limit as the clauses that forbid the
 * combinations of values it forbids, each choice a group of its own.
 */
final class Sat4jJudge {

    static {
        Logger.getLogger("org.sat4j").setLevel(Level.OFF);
    }

    private final Family family;
    private final Map<Choice, Integer> variables = new HashMap<>();

    private Sat4jJudge(Family family) {
        this.family = family;
        for (Option option : family.options()) {
            option.valueNames().forEach(value -> variables.put(new Choice(option.name(), value), variables.size() + 1));
        }
    }

    static Set<Set<Choice>> conflicts(Family family, List<Choice> choices) {
        return new Sat4jJudge(family).conflicts(choices);
    }

    private Set<Set<Choice>> conflicts(List<Choice> choices) {
        AllMUSes all = new AllMUSes(true, SolverFactory.instance());
        IGroupSolver solver = all.getSolverInstance();
        solver.newVar(variables.size());
        try {
            for (int[] clause : background()) {
                solver.addClause(new VecInt(clause), 0);
            }
            for (int i = 0; i < choices.size(); i++) {
                solver.addClause(new VecInt(new int[] {variable(choices.get(i))}), i + 1);
            }
        } catch (ContradictionException e) {
            return Set.of(Set.of());
        }
        return all.computeAllMUSes().stream()
                .map(groups -> chosen(groups, choices))
                .collect(Collectors.toSet());
    }

    private static Set<Choice> chosen(IVecInt groups, List<Choice> choices) {
        Set<Choice> chosen = new HashSet<>();
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i) > 0) {
                chosen.add(choices.get(groups.get(i) - 1));
            }
        }
        return chosen;
    }

    private List<int[]> background() {
        List<int[]> clauses = new ArrayList<>();
        for (Option option : family.options()) {
            List<Integer> values = option.valueNames().stream()
                    .map(value -> variable(new Choice(option.name(), value)))
                    .toList();
            clauses.add(values.stream().mapToInt(Integer::intValue).toArray());
            for (int one : values) {
                values.stream().filter(other -> other > one).forEach(other -> clauses.add(new int[] {-one, -other}));
            }
        }
        family.limits().stream().map(Limit::forbids).forEach(forbidden -> clauses.addAll(forbidding(forbidden)));
        return clauses;
    }

    private List<int[]> forbidding(Condition forbidden) {
        Set<OptionName> mentioned = Mentions.find(forbidden);
        List<Option> options = family.options().stream()
                .filter(option -> mentioned.contains(option.name()))
                .toList();
        Family only = SmallFamilies.family(options, List.of());
        return SmallFamilies.completions(Choices.of(only, Map.of())).stream()
                .filter(order -> Conditions.holds(forbidden, order))
                .map(order -> Chooser.list(order).stream()
                        .mapToInt(choice -> -variable(choice))
                        .toArray())
                .toList();
    }

    private int variable(Choice choice) {
        return variables.getOrDefault(choice, 0);
    }
}
