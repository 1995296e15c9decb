package boltlore.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What takes long to work out")
class WorkedOutTest {

    private static final long LONG_MS = 60_000;

    private final AtomicInteger times = new AtomicInteger();

    @Test
    @DisplayName("is worked out once as long as nothing that it depends on changes, and again after that")
    void once() {
        WorkedOut<String, Integer> worked = new WorkedOut<>(LONG_MS);
        assertThat(worked.of("a", times::incrementAndGet)).isEqualTo(new WorkedOut.Shown<>(1, true));
        assertThat(worked.of("a", times::incrementAndGet)).isEqualTo(new WorkedOut.Shown<>(1, true));
        assertThat(worked.of("b", times::incrementAndGet)).isEqualTo(new WorkedOut.Shown<>(2, true));
    }

    @Test
    @DisplayName(
            "is shown as it was and said to be so where it took too long, until it is worked out in the background")
    void in_the_background() throws InterruptedException {
        WorkedOut<String, Integer> worked = new WorkedOut<>(0);
        CountDownLatch go = new CountDownLatch(1);
        assertThat(worked.of("a", times::incrementAndGet)).isEqualTo(new WorkedOut.Shown<>(1, true));
        assertThat(worked.of("b", () -> after(go))).isEqualTo(new WorkedOut.Shown<>(1, false));
        assertThat(worked.of("b", () -> after(go))).as("one at a time").isEqualTo(new WorkedOut.Shown<>(1, false));
        go.countDown();
        WorkedOut.Shown<Integer> shown = worked.of("b", () -> after(go));
        for (int tried = 0; !shown.current() && tried < LONG_MS / 10; tried++) {
            TimeUnit.MILLISECONDS.sleep(10);
            shown = worked.of("b", () -> after(go));
        }
        assertThat(shown).isEqualTo(new WorkedOut.Shown<>(2, true));
    }

    @Test
    @DisplayName("is worked out within the reading of who waits for it, and by itself where nobody does")
    void within_the_reading() throws InterruptedException {
        WorkedOut<String, Integer> worked = new WorkedOut<>(0);
        CountDownLatch behind = new CountDownLatch(1);
        assertThat(worked.of("a", () -> 7, () -> 8)).isEqualTo(new WorkedOut.Shown<>(7, true));
        assertThat(worked.of("b", () -> 9, () -> {
                    behind.countDown();
                    return 10;
                }))
                .isEqualTo(new WorkedOut.Shown<>(7, false));
        assertThat(behind.await(LONG_MS, TimeUnit.MILLISECONDS)).isTrue();
    }

    private int after(CountDownLatch go) {
        try {
            go.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return times.incrementAndGet();
    }
}
