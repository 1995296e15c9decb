package boltlore.logic;

import java.util.List;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Variable;
import org.logicng.knowledgecompilation.bdds.jbuddy.BDDKernel;

/** Nodes of decision diagrams, up to a number; also looks at the time whenever it needs room. */
final class BoundedKernel extends BDDKernel {

    /** Thrown where the diagram needs more nodes than there may be. */
    static final class Outgrown extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Outgrown() {
            super("The diagram outgrew its room", null, false, false);
        }
    }

    private final int most;
    private final Deadline deadline;
    private volatile boolean abandoned;

    /** @param most nodes; each takes about 40 bytes */
    BoundedKernel(FormulaFactory formulas, List<Variable> ordered, int nodes, int cached, int most, Deadline deadline) {
        super(formulas, ordered, nodes, cached);
        this.most = most;
        this.deadline = deadline;
    }

    /** Ends what a thread still works on here; the diagrams are of no use any more. */
    void abandon() {
        abandoned = true;
    }

    /**
     * Goes on while there is time and somebody waits.
     *
     * @throws Deadline.Passed where not
     */
    void check() {
        if (abandoned) {
            throw new Deadline.Passed();
        }
        deadline.check();
    }

    @Override
    @SuppressWarnings("ConstantValue") // called from the constructor above, too
    protected void gbc() {
        if (deadline != null) {
            check();
        }
        super.gbc();
    }

    @Override
    protected void nodeResize(boolean rehash) {
        if (nodesize >= most) {
            throw new Outgrown();
        }
        super.nodeResize(rehash);
    }
}
