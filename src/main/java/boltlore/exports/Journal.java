package boltlore.exports;

import boltlore.json.JsonOut;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * What a run is about to do in a folder, and by its lock the sign that the run lives: the system lets go of the lock of a
 * process that ends, however it ends. Where the journal's lock is free, its run is dead.
 *
 * <p>A process must open a journal only once at a time: closing a second channel of one file lets go of the first one's
 * lock. {@link Exports} sees to that.
 */
final class Journal implements Closeable {

    /** No run writes so long into one folder; one that was stopped may. */
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private static final int PAUSE_MS = 3;

    private final FileChannel channel;
    private Inside folder;
    private final byte[] left;
    private boolean settled;

    private Journal(FileChannel channel, Inside folder, byte[] left) {
        this.channel = channel;
        this.folder = folder;
        this.left = left;
    }

    /**
     * The journal of a folder that is there, once no other run has it.
     *
     * @throws NoSuchFileException where the folder is gone
     */
    static Journal of(Inside folder) throws IOException {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < end) {
            Inside.make(folder.hidden());
            try {
                Files.createFile(folder.journal());
            } catch (FileAlreadyExistsException | NoSuchFileException anotherRun) {
                // Whose it is shows its lock.
            }
            Optional<Journal> journal = ofDeadRun(folder);
            if (journal.isPresent()) {
                return journal.get();
            }
            pause();
        }
        throw new FileSystemException(folder.folder().toString(), null, "another run is writing here");
    }

    /** The journal that is there, unless it is a living run's. */
    static Optional<Journal> ofDeadRun(Inside folder) throws IOException {
        Object key = key(folder.journal());
        if (key == null) {
            return Optional.empty();
        }
        FileChannel channel;
        try {
            channel = FileChannel.open(
                    folder.journal(),
                    Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS));
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        }
        Optional<Journal> journal = Optional.empty();
        try {
            FileLock lock = channel.tryLock();
            // Its run may have ended and taken the file away after it was opened here.
            if (lock != null && key.equals(key(folder.journal()))) {
                journal = Optional.of(new Journal(channel, folder, content(channel)));
            }
        } finally {
            if (journal.isEmpty()) {
                channel.close();
            }
        }
        return journal;
    }

    /** What tells a file from any other that has or had its name; null where no plain file is. */
    private static @Nullable Object key(Path file) throws IOException {
        try {
            BasicFileAttributes attributes =
                    Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return attributes.isRegularFile()
                    ? Objects.requireNonNullElse(attributes.fileKey(), attributes.creationTime())
                    : null;
        } catch (NoSuchFileException gone) {
            return null;
        }
    }

    private static byte[] content(FileChannel channel) throws IOException {
        ByteBuffer content = ByteBuffer.allocate((int) Math.min(channel.size(), Integer.MAX_VALUE));
        while (content.hasRemaining() && channel.read(content, content.position()) >= 0) {
            // One read may give a part.
        }
        return content.array();
    }

    private static void pause() throws IOException {
        try {
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while another run was writing", e);
        }
    }

    /** The moves that a dead run had begun. */
    Optional<Moves> leftMoves() {
        return Moves.read(left);
    }

    /** Whether a dead run had begun to write a whole folder, under this name and nowhere else. */
    boolean leftAside() {
        Path name = folder.folder().getFileName();
        return name != null && new String(left, StandardCharsets.UTF_8).equals(aside(name.toString()));
    }

    private static String aside(String name) {
        return JsonOut.object().put("writing", name).written();
    }

    /** Says that the folder is being written as a whole and is nothing yet under the name that it has now. */
    void beginAside() throws IOException {
        write(aside(Objects.requireNonNull(folder.folder().getFileName()).toString()));
    }

    void begin(Moves moves) throws IOException {
        write(moves.json().written());
    }

    private void write(String text) throws IOException {
        channel.truncate(0);
        ByteBuffer content = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (content.hasRemaining()) {
            channel.write(content, content.position());
        }
    }

    /** The folder has got its own name. */
    void movedTo(Inside target) {
        folder = target;
    }

    /** Nothing is left to do of what the journal says. */
    void settled() {
        settled = true;
    }

    void unsettled() {
        settled = false;
    }

    /** What is not settled stays for the next run. */
    @Override
    public void close() throws IOException {
        try (channel) {
            if (settled) {
                Files.deleteIfExists(folder.journal());
            }
        }
        if (settled) {
            Inside.deletedIfEmpty(folder.hidden());
        }
    }
}
