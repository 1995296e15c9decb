package boltlore.logic;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Runs what recurses as deep as a family has values on a thread whose stack is large enough for it. */
final class DeepStack {

    private static final long STACK_BYTES = 512L << 20;

    private static final long LOOK_MILLIS = 50;

    private DeepStack() {}

    /**
     * What the work comes to.
     *
     * @throws Deadline.Passed where the time is up first; the work's thread then goes on until it looks at the time itself,
     *     and nothing that it works on may be used any more
     */
    static <T extends @Nullable Object> T call(Deadline deadline, Supplier<T> work) {
        Running<T> running = new Running<>(work);
        Thread thread = new Thread(null, running, "counting", STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        try {
            while (thread.isAlive()) {
                thread.join(LOOK_MILLIS);
                if (thread.isAlive()) {
                    deadline.check();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Deadline.Passed();
        }
        return running.result();
    }

    private static final class Running<T extends @Nullable Object> implements Runnable {

        private final Supplier<T> work;
        private @Nullable T result;
        private @Nullable RuntimeException failed;

        Running(Supplier<T> work) {
            this.work = work;
        }

        @Override
        public void run() {
            try {
                result = work.get();
            } catch (RuntimeException e) {
                failed = e;
            }
        }

        @SuppressWarnings("NullAway") // the result is null only where T allows it
        T result() {
            if (failed != null) {
                throw failed;
            }
            return result;
        }
    }
}
