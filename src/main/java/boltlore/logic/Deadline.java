package boltlore.logic;

import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/** Until when an answer is wanted. */
public final class Deadline {

    /** No end; nobody can bring it forward. */
    public static final Deadline NONE = new Deadline(() -> 0, Long.MAX_VALUE, null);

    /** Thrown when the time is up, or the memory set aside; what has been answered before stands. */
    public static class Passed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Passed() {
            this("the time was up");
        }

        public Passed(String why) {
            super(why, null, false, false);
        }

        /** Whether the answer is only a matter of time. */
        public boolean moreTimeHelps() {
            return getClass() == Passed.class;
        }

        /** Why there is no answer, as the end of a sentence. */
        public String why() {
            return String.valueOf(getMessage());
        }
    }

    private static final int MOST_SHARES = 20;

    private final LongSupplier nanos;
    private final long duration;
    private final @Nullable Deadline whole;
    private volatile long until;
    private volatile boolean stopped;

    private Deadline(LongSupplier nanos, long duration, @Nullable Deadline whole) {
        this.nanos = nanos;
        this.duration = duration;
        this.whole = whole;
        begin();
    }

    /** A deadline that many nanoseconds after now on the given clock. */
    public static Deadline in(long duration, LongSupplier nanos) {
        return new Deadline(nanos, duration, null);
    }

    /** A part of this time, for several pieces of work one after the other: each {@link #beginOneOf begins} it. */
    public Deadline part() {
        return new Deadline(nanos, Long.MAX_VALUE, this);
    }

    /** Gives the whole time once more, from now on, unless it was stopped. */
    public void begin() {
        begin(duration);
    }

    /**
     * Of a part: gives the next of that many pieces of work an equal share of what is left of the whole, and no less than
     * a twentieth of it: most pieces are done in far less.
     */
    public void beginOneOf(int pieces) {
        long left = whole == null || whole.until == Long.MAX_VALUE ? Long.MAX_VALUE : whole.until - nanos.getAsLong();
        begin(Math.max(0, left) / Math.min(pieces, MOST_SHARES));
    }

    /** Gives that many nanoseconds, from now on, unless it was stopped. */
    public void begin(long time) {
        long now = nanos.getAsLong();
        until = now > 0 && time > Long.MAX_VALUE - now ? Long.MAX_VALUE : now + time;
    }

    /** Lets the next check fail, from any thread. */
    public void stop() {
        stopped = true;
    }

    /** Whether the time is up. */
    public boolean passed() {
        return stopped || nanos.getAsLong() > until || (whole != null && whole.passed());
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
