package boltlore.logic;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Runs what recurses as deep as a family has values on a thread whose stack is large enough for it. */
final class DeepStack {

    private static final long STACK_BYTES = 512L << 20;

    private DeepStack() {}

    static <T extends @Nullable Object> T call(Supplier<T> work) {
        Running<T> running = new Running<>(work);
        Thread thread = new Thread(null, running, "counting", STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        try {
            thread.join();
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
