package boltlore.trades.costing.path;

/**
 * When an activity may run, in days from the start.
 *
 * @param earliestStart when all that must be finished before it can be
 * @param latestStart beyond which everything ends later
 */
public record Slot<T>(Activity<T> activity, int earliestStart, int latestStart) {

    public int earliestFinish() {
        return earliestStart + activity.days();
    }

    public int latestFinish() {
        return latestStart + activity.days();
    }

    /** Days that it may be late without moving the end. */
    public int slack() {
        return latestStart - earliestStart;
    }

    public boolean critical() {
        return slack() == 0;
    }
}
