package boltlore.desk.frame;

import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What is worked out once and shown until the book has changed. Where that takes long nobody waits for it again: the page
 * shows it as it was and says so, while it is worked out anew in the background.
 *
 * @param <K> what it depends on
 * @param <T> what is worked out
 */
public final class WorkedOut<K, T> {

    /** Whoever looks waits for so long at most, but for the first time. */
    public static final long SLOW_MS = 1000;

    private final long slowNs;
    private @Nullable Made<K, T> last;
    private boolean working;

    /** @param slowMs from which on nobody waits for it any more */
    public WorkedOut(long slowMs) {
        this.slowNs = TimeUnit.MILLISECONDS.toNanos(slowMs);
    }

    private record Made<K, T>(K key, T value, long tookNs) {}

    /**
     * What there is to show.
     *
     * @param current false where the book has changed since
     */
    public record Shown<T>(T value, boolean current) {}

    /**
     * What was worked out for the key, or for an earlier one where working it out takes long.
     *
     * @param work reads the book by itself: it may outlive the call that asks
     */
    public Shown<T> of(K key, Supplier<T> work) {
        return of(key, work, work);
    }

    /**
     * The same for who reads the book already: others wait meanwhile with their connections, so that a second one for the
     * work might never come free.
     *
     * @param here what it waits for, within its own reading
     * @param behind the same by itself: it may outlive the call that asks
     */
    public Shown<T> of(K key, Supplier<T> here, Supplier<T> behind) {
        Made<K, T> made;
        synchronized (this) {
            if (last == null || (!last.key().equals(key) && last.tookNs() < slowNs)) {
                last = make(key, here);
            }
            made = last;
            if (made.key().equals(key) || working) {
                return new Shown<>(made.value(), made.key().equals(key));
            }
            working = true;
        }
        Thread again = new Thread(() -> renew(key, behind), "working out again");
        again.setDaemon(true);
        again.start();
        return new Shown<>(made.value(), false);
    }

    private void renew(K key, Supplier<T> work) {
        try {
            Made<K, T> made = make(key, work);
            synchronized (this) {
                last = made;
            }
        } finally {
            synchronized (this) {
                working = false;
            }
        }
    }

    private static <K, T> Made<K, T> make(K key, Supplier<T> work) {
        long begun = System.nanoTime();
        T value = work.get();
        return new Made<>(key, value, System.nanoTime() - begun);
    }
}
