package boltlore.logic;

import org.logicng.collections.LNGIntVector;
import org.logicng.datastructures.Tristate;
import org.logicng.solvers.sat.MiniSat2Solver;
import org.logicng.solvers.sat.MiniSatConfig;

/** A solver that also tells what follows from assumptions without any search, and takes advice which values to try. */
final class PropagatingSolver extends MiniSat2Solver {

    PropagatingSolver(MiniSatConfig config) {
        super(config);
    }

    /**
     * Which of the literals are already false by unit propagation.
     *
     * @param assumptions that can be fulfilled together
     */
    boolean[] refuted(int[] assumptions, int[] literals) {
        trailLim.push(trail.size());
        for (int literal : assumptions) {
            if (value(literal) == Tristate.UNDEF) {
                uncheckedEnqueue(literal, null);
            }
        }
        propagate();
        boolean[] refuted = new boolean[literals.length];
        for (int i = 0; i < literals.length; i++) {
            refuted[i] = value(literals[i]) == Tristate.FALSE;
        }
        cancelUntil(0);
        return refuted;
    }

    /** Lets the search try these literals first, in this order. */
    void tryFirst(LNGIntVector literals) {
        selectionOrder.clear();
        for (int i = 0; i < literals.size(); i++) {
            selectionOrder.push(literals.get(i));
        }
        selectionOrderIdx = 0;
    }
}
