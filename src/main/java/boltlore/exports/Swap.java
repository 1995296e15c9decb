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

    /** As many failures as this are no accident of other runs any more. */
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
            for (int tries = 1; !swapped(aside, target, tries); tries++) {
                Thread.onSpinWait();
            }
        } finally {
            BETWEEN_MOVES.readLock().unlock();
        }
    }

    /**
     * One try. Another run may put its folder in place between our two moves, and a third may have moved that away again
     * before we look: neither the disk's words nor a look afterwards tell it from a disk that refuses, so what fails is
     * tried again.
     */
    private static boolean swapped(Path aside, Path target, int tries) throws IOException {
        Path old = Aside.oldFor(aside);
        boolean hadOld = movedAway(target, old);
        try {
            move(aside, target);
        } catch (IOException e) {
            if (hadOld) {
                putBack(old, target);
            }
            if (tries == TRIES || !Files.isDirectory(aside)) {
                throw e;
            }
            return false;
        }
        if (hadOld) {
            Leftovers.delete(old);
        }
        return true;
    }

    /** The sheets that had made room come back, except where another run has put newer ones there meanwhile. */
    private static void putBack(Path old, Path target) throws IOException {
        for (int tries = 1; ; tries++) {
            try {
                move(old, target);
                return;
            } catch (IOException e) {
                if (Files.isDirectory(target)) {
                    Leftovers.delete(old);
                    return;
                }
                if (tries == TRIES) {
                    throw e;
                }
            }
        }
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
