package boltlore.cli;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Says how far a long run has come, once it has taken over a second. */
final class Progress {

    private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(1);

    private final PrintWriter aside;
    private final int all;
    private final AtomicInteger done = new AtomicInteger();
    private long lastSaid = System.nanoTime();
    private boolean said;

    Progress(PrintWriter aside, int all) {
        this.aside = aside;
        this.all = all;
    }

    void oneMore() {
        int now = done.incrementAndGet();
        synchronized (this) {
            if (System.nanoTime() - lastSaid > QUIET_NANOS && now < all) {
                lastSaid = System.nanoTime();
                said = true;
                aside.print("\r" + now + " of " + all + " orders");
                aside.flush();
            }
        }
    }

    synchronized void end() {
        if (said) {
            aside.println("\r" + all + " of " + all + " orders");
            aside.flush();
        }
    }
}
