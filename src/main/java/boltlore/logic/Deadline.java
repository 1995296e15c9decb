package boltlore.logic;

import java.util.function.LongSupplier;

/** Until when an answer is wanted. */
public final class Deadline {

    public static final Deadline NONE = new Deadline(() -> 0, Long.MAX_VALUE);

    /** Thrown when the time is up; what has been answered before stands. */
    public static final class Passed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Passed() {
            super("The time for answers is up", null, false, false);
        }
    }

    private final LongSupplier nanos;
    private final long until;
    private volatile boolean stopped;

    private Deadline(LongSupplier nanos, long until) {
        this.nanos = nanos;
        this.until = until;
    }

    /** A deadline that many nanoseconds after now on the given clock. */
    public static Deadline in(long duration, LongSupplier nanos) {
        return new Deadline(nanos, nanos.getAsLong() + duration);
    }

    /** Lets the next check fail, from any thread. */
    public void stop() {
        stopped = true;
    }

    /** Whether the time is up. */
    public boolean passed() {
        return stopped || nanos.getAsLong() > until;
    }

    /**
     * Goes on while there is time.
     *
     * @throws Passed where the time is up
     */
    public void check() {
        if (passed()) {
            throw new Passed();
        }
    }
}
