package boltlore.logic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.logicng.datastructures.Assignment;
import org.logicng.datastructures.Tristate;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;
import org.logicng.solvers.MiniSat;
import org.logicng.solvers.sat.MiniSatConfig;

/** Sets of requests of which it is not known whether they can be fulfilled, large ones first. */
final class MarcoMap<T> {

    private final FormulaFactory formulas = new FormulaFactory();
    private final List<T> requests;
    private final List<Variable> taken = new ArrayList<>();
    private final MiniSat map =
            MiniSat.miniSat(formulas, MiniSatConfig.builder().initialPhase(true).build());

    MarcoMap(List<T> requests) {
        this.requests = requests;
        for (int i = 0; i < requests.size(); i++) {
            Variable variable = formulas.variable("r" + i);
            taken.add(variable);
            map.add(formulas.or(variable, formulas.variable("either")));
        }
    }

    Optional<List<T>> next() {
        if (map.sat() != Tristate.TRUE) {
            return Optional.empty();
        }
        Assignment model = map.model(taken);
        return Optional.of(IntStream.range(0, requests.size())
                .filter(i -> model.evaluateLit(taken.get(i)))
                .mapToObj(requests::get)
                .toList());
    }

    void withoutOneOf(List<T> conflict) {
        map.add(formulas.or(literals(conflict, false)));
    }

    void withOneOf(List<T> repair) {
        map.add(formulas.or(literals(repair, true)));
    }

    private List<Literal> literals(List<T> some, boolean phase) {
        return some.stream()
                .map(request -> taken.get(requests.indexOf(request)))
                .<Literal>map(variable -> phase ? variable : variable.negate())
                .toList();
    }
}
