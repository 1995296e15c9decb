package boltlore.logic;

import boltlore.choices.Choice;
import java.util.ArrayList;
import java.util.List;
import org.logicng.collections.LNGBooleanVector;
import org.logicng.formulas.Literal;
import org.logicng.solvers.MiniSat;

/** Reads the values of the order that a solver has found, without building an assignment of all its variables. */
final class ShownValues {

    private final MiniSat solver;
    private final List<Choice> choices = new ArrayList<>();
    private final int[] places;
    private final boolean[] phases;

    /** Once all variables of options are known to the solver. */
    ShownValues(OptionVariables variables, MiniSat solver) {
        this.solver = solver;
        int size = variables.literals().size();
        places = new int[size];
        phases = new boolean[size];
        variables.literals().forEach((choice, literal) -> add(choice, literal));
    }

    private void add(Choice choice, Literal literal) {
        places[choices.size()] =
                solver.underlyingSolver().idxForName(literal.variable().name());
        phases[choices.size()] = literal.phase();
        choices.add(choice);
    }

    List<Choice> last() {
        LNGBooleanVector model = solver.underlyingSolver().model();
        List<Choice> shown = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            if (model.get(places[i]) == phases[i]) {
                shown.add(choices.get(i));
            }
        }
        return shown;
    }
}
