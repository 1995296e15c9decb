package boltlore.logic;

import org.logicng.handlers.SATHandler;

/** Lets a search go on while there is time, while it does not outgrow its memory, and up to a number of conflicts. */
final class ConflictBudget implements SATHandler {

    /** So many tell that a search is no trouble. */
    static final int FEW = 100;

    private final Deadline deadline;
    private final SolverInternals.Search search;
    private final int most;
    private int conflicts;

    ConflictBudget(Deadline deadline, SolverInternals.Search search, int most) {
        this.deadline = deadline;
        this.search = search;
        this.most = most;
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
        return conflicts > most || deadline.passed() || search.isLarge();
    }
}
