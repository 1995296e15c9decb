package boltlore.cli;

import boltlore.logic.Deadline;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.ToIntFunction;

/** Work that the interrupt key ends early: it is told to stop, and the program waits until it has printed what it has. */
final class Interruptible {

    private static final long LONGEST_WAIT_SECONDS = 10;

    private Interruptible() {}

    /** The work's exit code. It must print its answer, whole or in part, before it returns. */
    static int run(Deadline deadline, ToIntFunction<Deadline> work) {
        CountDownLatch printed = new CountDownLatch(1);
        Thread ending = new Thread(() -> stop(deadline, printed), "ending");
        Runtime.getRuntime().addShutdownHook(ending);
        try {
            return work.applyAsInt(deadline);
        } finally {
            printed.countDown();
            forget(ending);
        }
    }

    private static void stop(Deadline deadline, CountDownLatch printed) {
        deadline.stop();
        try {
            boolean inTime = printed.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
            assert inTime || deadline.passed();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Of no hook that has run already. */
    static void forget(Thread ending) {
        try {
            Runtime.getRuntime().removeShutdownHook(ending);
        } catch (IllegalStateException alreadyEnding) {
            // The program is ending: the hook runs and has been let go.
        }
    }
}
