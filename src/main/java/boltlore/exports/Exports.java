package boltlore.exports;

import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * Writes sheets so that nothing is lost: a manifest in the folder says what the program wrote there, and only what is
 * still as it was written is replaced or removed. A new folder appears whole; in an old one the sheets are written aside
 * and then moved, and moves that a killed run left half done are undone by the next run.
 */
public final class Exports {

    /** As many failures as this are no accident of other runs any more. */
    private static final int TRIES = 100;

    private static final int RANDOM_BITS = 128;
    private static final SecureRandom RANDOM = new SecureRandom();

    /** Runs of one process into one folder take turns, as those of several processes do by the journal's lock. */
    private static final Map<Path, ReentrantLock> TURNS = new ConcurrentHashMap<>();

    /** Moves share it; the stop of the program waits until it has it alone. */
    private static final ReentrantReadWriteLock BETWEEN_MOVES = new ReentrantReadWriteLock();

    static {
        Runtime.getRuntime()
                .addShutdownHook(new Thread(() -> BETWEEN_MOVES.writeLock().lock(), "let moves end"));
    }

    private final Path shown;
    private final Inside target;
    private final List<SheetSet> sets;
    private final boolean mayStandBeside;
    private final Print carriedOver;

    private Exports(Path shown, Path target, List<SheetSet> sets, boolean mayStandBeside, Print carriedOver) {
        this.carriedOver = carriedOver;
        this.shown = shown;
        this.target = new Inside(target);
        this.sets = sets;
        this.mayStandBeside = mayStandBeside;
    }

    /**
     * Puts the files into the folder, each kind of run's own files in the place of its earlier ones.
     *
     * @return what was written, and what somebody had changed and so stayed; faulty where something could not be written
     *     or would be lost, and then the folder is as it was before
     */
    public static Outcome<Written> write(Path folder, List<SheetSet> sets) {
        return write(folder, sets, true, Plan.NOTHING);
    }

    /**
     * Writes one file under just that name, in the place of what this kind of run last wrote there.
     *
     * @return faulty where something else stands there, or it was changed
     */
    public static Outcome<Path> file(Path file, String kind, byte[] content) {
        return file(file, kind, content, new byte[0]);
    }

    /**
     * The same, also in the place of an earlier one that somebody has written in, where that is all in the content.
     *
     * @param carriedOver what stands there, as it was read to make the content; empty where nothing was read
     */
    public static Outcome<Path> file(Path file, String kind, byte[] content, byte[] carriedOver) {
        Path name = file.getFileName();
        Path parent = Objects.requireNonNullElse(file.getParent(), Path.of(""));
        return name == null
                ? Outcome.faulty(Unwritten.noPlace(file))
                : write(parent, List.of(set(kind, name.toString(), content)), false, Print.of(carriedOver))
                        .then(written -> Outcome.sound(file));
    }

    /** Writes a file under a name that nothing has yet; faulty where something has it. */
    public static Outcome<Path> newFile(Path file, byte[] content) {
        Path whole = file.toAbsolutePath();
        NewFolders made = new NewFolders();
        Path aside = whole.resolveSibling(randomName());
        try {
            made.make(Objects.requireNonNull(whole.getParent()));
            try {
                write(aside, content);
                Inside.moveToFree(aside, whole);
            } finally {
                Files.deleteIfExists(aside);
            }
            return Outcome.sound(file);
        } catch (FileAlreadyExistsException taken) {
            return Outcome.faulty(Unwritten.wouldLose(file, false));
        } catch (IOException e) {
            made.keepIf(false);
            return Outcome.faulty(Unwritten.told(file, e));
        }
    }

    private static SheetSet set(String kind, String name, byte[] content) {
        return new SheetSet(kind + " " + name, List.of(new SheetFile(name, content)), true);
    }

    private static Outcome<Written> write(Path folder, List<SheetSet> sets, boolean mayStandBeside, Print carriedOver) {
        Path absolute = folder.toAbsolutePath().normalize();
        if (absolute.getParent() == null || (Inside.there(absolute) && !Files.isDirectory(absolute))) {
            return Outcome.faulty(Unwritten.noPlace(folder));
        }
        NewFolders made = new NewFolders();
        try {
            Path target = target(absolute, made);
            Leftovers.settleAllIn(Objects.requireNonNull(target.getParent()));
            ReentrantLock turn = TURNS.computeIfAbsent(target, each -> new ReentrantLock());
            turn.lock();
            try {
                Outcome<Written> written = new Exports(folder, target, sets, mayStandBeside, carriedOver).write();
                made.keepIf(Inside.there(target));
                return written;
            } finally {
                turn.unlock();
            }
        } catch (IOException e) {
            made.keepIf(false);
            return Outcome.faulty(Unwritten.told(folder, e));
        }
    }

    /** The folder's own place, where links on the way are followed; what leads to it is made. */
    private static Path target(Path folder, NewFolders made) throws IOException {
        if (Files.isDirectory(folder)) {
            return folder.toRealPath();
        }
        Path parent = Objects.requireNonNull(folder.getParent());
        made.make(parent);
        return parent.toRealPath().resolve(Objects.requireNonNull(folder.getFileName()));
    }

    private Outcome<Written> write() throws IOException {
        for (int tries = 1; ; tries++) {
            try {
                return Inside.there(target.folder()) ? intoOld() : isEmpty() ? nothing() : asNew();
            } catch (AnotherRun inBetween) {
                if (tries == TRIES) {
                    throw inBetween;
                }
            }
        }
    }

    private boolean isEmpty() {
        return sets.stream().allMatch(set -> set.files().isEmpty());
    }

    private static Outcome<Written> nothing() {
        return Outcome.sound(new Written(List.of(), List.of()));
    }

    /** Another run has made, or taken away, the folder between two steps of this one. */
    private static final class AnotherRun extends IOException {
        private static final long serialVersionUID = 1;

        private AnotherRun(IOException cause) {
            super("other runs write here at the same time", cause);
        }
    }

    private Journal journal(Inside folder) throws IOException {
        try {
            return Journal.of(folder);
        } catch (NoSuchFileException gone) {
            throw new AnotherRun(gone);
        }
    }

    private Outcome<Written> asNew() throws IOException {
        Inside aside = new Inside(Files.createDirectory(target.folder().resolveSibling(randomName())));
        try (Journal journal = journal(aside)) {
            try {
                journal.beginAside();
                Outcome<Plan> plan = new Plan(aside, shown, Manifest.none(), mayStandBeside, carriedOver).of(sets);
                if (plan instanceof Outcome.Sound<Plan> sound) {
                    fill(aside, sound.value().coming());
                    write(aside.manifest(), sound.value().manifest().content());
                    BETWEEN_MOVES.readLock().lock();
                    try {
                        moveWhole(aside);
                        journal.movedTo(target);
                    } finally {
                        BETWEEN_MOVES.readLock().unlock();
                    }
                }
                return plan.then(done -> Outcome.sound(done.written()));
            } finally {
                Inside.delete(aside.folder());
                journal.settled();
            }
        }
    }

    static String randomName() {
        return Leftovers.ASIDE + new BigInteger(RANDOM_BITS, RANDOM).toString(Character.MAX_RADIX);
    }

    private void moveWhole(Inside aside) throws IOException {
        try {
            Files.move(aside.folder(), target.folder(), StandardCopyOption.ATOMIC_MOVE);
        } catch (FileSystemException e) {
            throw Inside.there(target.folder()) ? new AnotherRun(e) : e;
        }
    }

    private Outcome<Written> intoOld() throws IOException {
        if (Inside.there(target.hidden()) && !Inside.isFolder(target.hidden())) {
            return Outcome.faulty(Unwritten.wouldLose(shown.resolve(Inside.HIDDEN), false));
        }
        try (Journal journal = journal(target)) {
            Leftovers.settle(target, journal);
            Outcome<Manifest> manifest = Manifest.of(target);
            Outcome<Plan> plan = manifest instanceof Outcome.Sound<Manifest> known
                    ? new Plan(target, shown, known.value(), mayStandBeside, carriedOver).of(sets)
                    : Outcome.faulty(manifest.faults());
            return plan instanceof Outcome.Sound<Plan> sound
                    ? Outcome.sound(carryOut(sound.value(), journal))
                    : Outcome.faulty(plan.faults());
        }
    }

    private Written carryOut(Plan plan, Journal journal) throws IOException {
        if (plan.changesNothing()) {
            return plan.written();
        }
        try {
            fill(target.fresh(), plan.coming());
            write(Moves.newManifest(target), plan.manifest().content());
        } catch (IOException e) {
            Moves.clearAside(target);
            throw e;
        }
        BETWEEN_MOVES.readLock().lock();
        try {
            move(plan.moves(), journal);
        } finally {
            BETWEEN_MOVES.readLock().unlock();
        }
        return plan.written();
    }

    /** What fails in the middle is undone; where that fails too the journal stays, for the next run. */
    private void move(Moves moves, Journal journal) throws IOException {
        journal.begin(moves);
        journal.unsettled();
        try {
            moves.carryOut(target);
        } catch (IOException e) {
            moves.settle(target);
            journal.settled();
            throw e;
        }
        moves.clear(target);
        journal.settled();
    }

    private static void fill(Inside folder, List<Plan.Coming> files) throws IOException {
        for (Plan.Coming coming : files) {
            folder.makeRoomFor(coming.name());
            write(folder.file(coming.name()), coming.file().content());
        }
    }

    static void write(Path file, byte[] content) throws IOException {
        Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }
}
