package boltlore.trades.scheduling.finite;

import java.util.Comparator;

/**
 * Which of the jobs that wait for a station is taken next. Each is a rule of the textbooks (R. W. Conway, W. L. Maxwell and
 * L. W. Miller, Theory of Scheduling, 1967, chapter 11; M. L. Pinedo, Scheduling, chapter 14; from memory).
 */
public enum DispatchRule {
    /** The order that is due first: least maximum lateness on one machine where all is there (J. R. Jackson, 1955). */
    EARLIEST_DUE("earliest-due", "earliest due date", Comparator.comparingInt(Waiting::due)),
    /** What must begin soonest for its order to be in time: time left less work and days left. */
    LEAST_SLACK("least-slack", "least slack", Comparator.comparingLong(Waiting::latestBegin)),
    /** The shortest job: least mean time in the shop on one machine (W. E. Smith, 1956). */
    SHORTEST("shortest", "shortest operation", Comparator.comparingLong(Waiting::minutes)),
    /** What has waited longest. */
    FIRST_COME("first-come", "first come, first served", Comparator.comparingLong(Waiting::ready));

    private final String written;
    private final String says;

    @SuppressWarnings("ImmutableEnumChecker") // a comparator of records holds nothing that changes
    private final Comparator<Waiting> order;

    DispatchRule(String written, String says, Comparator<Waiting> first) {
        this.written = written;
        this.says = says;
        // Whatever the rule leaves open is decided the same way in every run.
        this.order = first.thenComparingLong(Waiting::latestBegin)
                .thenComparingInt(Waiting::order)
                .thenComparingInt(Waiting::step);
    }

    /** As it is typed. */
    public String written() {
        return written;
    }

    public String says() {
        return says;
    }

    Comparator<Waiting> order() {
        return order;
    }

    /**
     * Work that could begin if a station were free.
     *
     * @param ready since when
     * @param due of its order
     * @param latestBegin time at which it must begin for its order to be in time
     */
    record Waiting(int order, int step, int work, int due, long ready, long latestBegin, long minutes) {}
}
