package boltlore.logic;

import org.logicng.handlers.SATHandler;

/** Lets a search go on while there is time and it has not run into many conflicts. */
final class WhileEasy implements SATHandler {

    private static final int MOST_CONFLICTS = 100;

    private final Deadline deadline;
    private int conflicts;

    WhileEasy(Deadline deadline) {
        this.deadline = deadline;
    }

    @Override
    public void started() {
        conflicts = 0;
    }

    @Override
    public boolean detectedConflict() {
        conflicts++;
        return !aborted();
    }

    @Override
    public boolean aborted() {
        return conflicts > MOST_CONFLICTS || deadline.passed();
    }
}
