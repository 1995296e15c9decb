package boltlore.exports;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/** Puts a finished folder in the place of the old one; once begun it ends, also when the program is told to stop. */
final class Swap {

    /** Other runs may put theirs in place between our two moves; as many as this is no accident any more. */
    private static final int TRIES = 100;

    /** Swaps share it; the stop of the program waits until it has it alone. */
    private static final ReentrantReadWriteLock BETWEEN_MOVES = new ReentrantReadWriteLock();

    static {
        Runtime.getRuntime()
                .addShutdownHook(new Thread(() -> BETWEEN_MOVES.writeLock().lock(), "let swaps end"));
    }

    private Swap() {}

    static void intoPlace(Path aside, Path target) throws IOException {
        BETWEEN_MOVES.readLock().lock();
        try {
            Path old = Aside.oldFor(aside);
            for (int tries = 1; !swapped(aside, target, old); tries++) {
                if (tries == TRIES) {
                    throw new IOException("other runs keep writing into it");
                }
            }
        } finally {
            BETWEEN_MOVES.readLock().unlock();
        }
    }

    private static boolean swapped(Path aside, Path target, Path old) throws IOException {
        boolean hadOld = movedAway(target, old);
        try {
            move(aside, target);
        } catch (IOException e) {
            // Another run may have put its folder in place between our two moves; the disk words that in many ways.
            boolean anotherRun = Files.isDirectory(target) && Files.isDirectory(aside);
            if (hadOld && anotherRun) {
                Leftovers.delete(old);
            } else if (hadOld) {
                move(old, target);
            }
            if (anotherRun) {
                return false;
            }
            throw e;
        }
        if (hadOld) {
            Leftovers.delete(old);
        }
        return true;
    }

    private static boolean movedAway(Path target, Path old) throws IOException {
        try {
            move(target, old);
            return true;
        } catch (NoSuchFileException noneYet) {
            return false;
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to);
        }
    }
}
