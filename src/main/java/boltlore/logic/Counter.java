package boltlore.logic;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;

/**
 * Counts how many of some literals hold, in unary: the output at place k holds when more than k of them do (totalizer;
 * Bailleux and Boufkhad, Efficient CNF encoding of Boolean cardinality constraints, CP 2003; from memory). Only this
 * direction is said, which is what a lower bound needs.
 */
final class Counter {

    private final FormulaFactory formulas;
    private final Supplier<Variable> fresh;
    private final Consumer<Formula> clauses;
    private final List<Literal> outputs;

    Counter(List<Literal> inputs, FormulaFactory formulas, Supplier<Variable> fresh, Consumer<Formula> clauses) {
        this.formulas = formulas;
        this.fresh = fresh;
        this.clauses = clauses;
        this.outputs = count(inputs);
    }

    int size() {
        return outputs.size();
    }

    /** Holds when more than that many inputs hold. */
    Literal moreThan(int many) {
        return outputs.get(many);
    }

    private List<Literal> count(List<Literal> inputs) {
        if (inputs.size() == 1) {
            return inputs;
        }
        int middle = inputs.size() / 2;
        return merged(count(inputs.subList(0, middle)), count(inputs.subList(middle, inputs.size())));
    }

    private List<Literal> merged(List<Literal> left, List<Literal> right) {
        List<Literal> sums = Stream.<Literal>generate(fresh)
                .limit(left.size() + right.size())
                .toList();
        for (int i = 0; i <= left.size(); i++) {
            for (int j = i == 0 ? 1 : 0; j <= right.size(); j++) {
                clauses.accept(formulas.or(unless(left, i), unless(right, j), sums.get(i + j - 1)));
            }
        }
        return sums;
    }

    /** Holds where fewer than that many do; the false formula for none. */
    private Formula unless(List<Literal> counted, int many) {
        return many == 0 ? formulas.falsum() : counted.get(many - 1).negate();
    }
}
