package boltlore.logic;

import org.logicng.handlers.SATHandler;

/** Lets a search go on while there is time: it is asked at each conflict. */
record UntilDeadline(Deadline deadline) implements SATHandler {

    @Override
    public boolean detectedConflict() {
        return !deadline.passed();
    }

    @Override
    public boolean aborted() {
        return deadline.passed();
    }
}
