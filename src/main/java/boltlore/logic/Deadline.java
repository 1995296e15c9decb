package boltlore.logic;

import java.util.function.LongSupplier;

/** Until when an answer is wanted. */
public final class Deadline {

    /** No end; nobody can bring it forward. */
    public static final Deadline NONE = new Deadline(() -> 0, Long.MAX_VALUE);

    /** Thrown when the time is up; what has been answered before stands. */
    public static final class Passed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Passed() {
            super("The time for answers is up", null, false, false);
        }
    }

    private final LongSupplier nanos;
    private final long duration;
    private volatile long until;
    private volatile boolean stopped;

    private Deadline(LongSupplier nanos, long duration) {
        this.nanos = nanos;
        this.duration = duration;
        begin();
    }

    /** A deadline that many nanoseconds after now on the given clock. */
    public static Deadline in(long duration, LongSupplier nanos) {
        return new Deadline(nanos, duration);
    }

    /** Gives the whole time once more, from now on, unless it was stopped. */
    public void begin() {
        long now = nanos.getAsLong();
        until = now > 0 && duration > Long.MAX_VALUE - now ? Long.MAX_VALUE : now + duration;
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
