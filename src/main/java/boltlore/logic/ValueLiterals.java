package boltlore.logic;

import boltlore.choices.Choice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.logicng.collections.LNGBooleanVector;
import org.logicng.collections.LNGIntVector;
import org.logicng.formulas.Literal;

/** The values as the solver numbers them, to read and to steer it without building objects for every variable. */
final class ValueLiterals {

    private final PropagatingSolver solver;
    private final List<Choice> choices;
    private final Map<Choice, Integer> places = new HashMap<>();
    private final int[] literals;

    /** Once all variables of options are known to the solver. */
    ValueLiterals(OptionVariables variables, PropagatingSolver solver) {
        this.solver = solver;
        this.choices = List.copyOf(variables.literals().keySet());
        this.literals =
                variables.literals().values().stream().mapToInt(this::literal).toArray();
        choices.forEach(choice -> places.put(choice, places.size()));
    }

    private int literal(Literal literal) {
        return solver.idxForName(literal.variable().name()) * 2 + (literal.phase() ? 0 : 1);
    }

    /** The values of the order found last. */
    List<Choice> last() {
        LNGBooleanVector model = solver.model();
        List<Choice> shown = new ArrayList<>();
        for (int i = 0; i < literals.length; i++) {
            boolean negative = (literals[i] & 1) == 1;
            if (model.get(literals[i] / 2) != negative) {
                shown.add(choices.get(i));
            }
        }
        return shown;
    }

    /** Values that cannot stand beside what is assumed, as far as that is plain without a search. */
    Set<Choice> excluded(List<Literal> assumed) {
        boolean[] refuted =
                solver.refuted(assumed.stream().mapToInt(this::literal).toArray(), literals);
        Set<Choice> excluded = new HashSet<>();
        for (int i = 0; i < literals.length; i++) {
            if (refuted[i]) {
                excluded.add(choices.get(i));
            }
        }
        return excluded;
    }

    /** All values but these, in the family's order. */
    List<Choice> allBut(Set<Choice> settled) {
        return choices.stream().filter(choice -> !settled.contains(choice)).toList();
    }

    /** Lets the search try these values first, in this order. */
    void tryFirst(List<Choice> values) {
        LNGIntVector first = new LNGIntVector();
        values.forEach(choice -> first.push(literals[places.getOrDefault(choice, 0)]));
        solver.tryFirst(first);
    }

    void tryAny() {
        solver.tryFirst(new LNGIntVector());
    }
}
