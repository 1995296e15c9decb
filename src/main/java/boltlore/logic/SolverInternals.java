package boltlore.logic;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.logicng.collections.LNGBooleanVector;
import org.logicng.collections.LNGIntVector;
import org.logicng.datastructures.Tristate;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Variable;
import org.logicng.handlers.SATHandler;
import org.logicng.knowledgecompilation.bdds.BDD;
import org.logicng.knowledgecompilation.bdds.BDDFactory;
import org.logicng.knowledgecompilation.bdds.jbuddy.BDDConstruction;
import org.logicng.knowledgecompilation.bdds.jbuddy.BDDKernel;
import org.logicng.solvers.sat.MiniSat2Solver;
import org.logicng.solvers.sat.MiniSatConfig;

/**
 * The search and the diagrams of the SAT library where this program reaches into what the library keeps to itself: what
 * follows without a search, which values to try first, how large a diagram may grow. Nothing else in the program does; a
 * test of this class fails where another version of the library means something else by it.
 *
 * <p>A literal is a number: twice that of its variable, one more where it is negated.
 */
final class SolverInternals {

    private SolverInternals() {}

    static int not(int literal) {
        return literal ^ 1;
    }

    /** Thrown where a search or a diagram needs more memory than is set aside for it. */
    static final class Outgrown extends Deadline.Passed {

        private static final long serialVersionUID = 1L;

        Outgrown() {
            super("the search outgrew the memory set aside for it");
        }
    }

    /** An incremental search over clauses. */
    static final class Search extends MiniSat2Solver {

        /** Clauses, learnt ones included, of about 150 bytes each. */
        private static final int MOST_CLAUSES = 1_500_000;

        Search() {
            super(MiniSatConfig.builder().build());
        }

        /** A variable that was not there before, as a literal. */
        int fresh() {
            int variable = newVar(true, true);
            addName("v" + variable, variable);
            return 2 * variable;
        }

        /**
         * One of these holds from now on.
         *
         * @throws Outgrown where there are too many clauses
         */
        void clause(int... literals) {
            if (clauses.size() + learnts.size() > MOST_CLAUSES) {
                throw new Outgrown();
            }
            addClause(new LNGIntVector(literals), null);
        }

        /** Whether everything can be fulfilled with these literals; unknown where the handler ends the search. */
        Tristate fulfil(SATHandler handler, int... assumed) {
            return assumed.length == 0 ? solve(handler) : solve(handler, new LNGIntVector(assumed));
        }

        boolean isLarge() {
            return clauses.size() + learnts.size() > MOST_CLAUSES;
        }

        /** Whether the literal holds in what was found last. */
        boolean found(int literal) {
            LNGBooleanVector all = model();
            return all.get(literal / 2) == ((literal & 1) == 0);
        }

        /** Those of the literals assumed last that cannot be fulfilled together. */
        int[] against() {
            int[] assumed = new int[conflict.size()];
            for (int i = 0; i < assumed.length; i++) {
                assumed[i] = not(conflict.get(i));
            }
            return assumed;
        }

        /**
         * Which of the literals are already false by unit propagation.
         *
         * @param assumed literals that can be fulfilled together
         */
        boolean[] refuted(int[] assumed, int[] literals) {
            trailLim.push(trail.size());
            for (int literal : assumed) {
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
        void tryFirst(int... literals) {
            selectionOrder.clear();
            for (int literal : literals) {
                selectionOrder.push(literal);
            }
            selectionOrderIdx = 0;
        }
    }

    /** Nodes of decision diagrams, up to a number; also looks at the time whenever it needs room. Literals as above. */
    static final class Diagrams extends BDDKernel {

        private final int most;
        private final Deadline deadline;
        private final BDDConstruction construction = new BDDConstruction(this);
        private final List<Integer> kept = new ArrayList<>();
        private volatile boolean abandoned;

        /**
         * Diagrams over variables 0 up to that many.
         *
         * @param order of the variables, from the top
         * @param most nodes; each takes about 40 bytes
         */
        Diagrams(int[] order, int nodes, int most, Deadline deadline) {
            this(new FormulaFactory(), order, nodes, most, deadline);
        }

        private Diagrams(FormulaFactory names, int[] order, int nodes, int most, Deadline deadline) {
            super(names, named(names, order), nodes, nodes);
            this.most = most;
            this.deadline = deadline;
        }

        private static List<Variable> named(FormulaFactory names, int[] order) {
            return Arrays.stream(order)
                    .mapToObj(variable -> names.variable("v" + variable))
                    .toList();
        }

        int always() {
            return BDD_TRUE;
        }

        int never() {
            return BDD_FALSE;
        }

        int literal(int literal) {
            int variable = BDDFactory.build(factory().variable("v" + literal / 2), this)
                    .index();
            return (literal & 1) == 0 ? variable : negated(variable);
        }

        int negated(int diagram) {
            return keep(construction.not(diagram));
        }

        int and(int left, int right) {
            return keep(construction.and(left, right));
        }

        int or(int left, int right) {
            return keep(construction.or(left, right));
        }

        /** Its nodes stay until it is let go of. */
        private int keep(int diagram) {
            kept.add(addRef(diagram, null));
            return diagram;
        }

        /** How many diagrams are kept. */
        int kept() {
            return kept.size();
        }

        /** Lets go of the diagrams that were made since that many were kept. */
        void letGo(int since) {
            List<Integer> rest = kept.subList(since, kept.size());
            rest.forEach(this::delRef);
            rest.clear();
        }

        BigInteger count(int diagram) {
            return new BDD(diagram, this).modelCount();
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
}
