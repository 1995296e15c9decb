package boltlore.exports;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A file that one talk writes anew again and again. It takes a name that nothing has, for itself alone, and replaces only
 * what it has written itself: where somebody else has changed the file meanwhile, it goes on under another name.
 */
public final class KeptFile {

    private @Nullable Path file;
    private @Nullable Print print;

    /** One that is nowhere yet. */
    public KeptFile() {}

    /** Goes on in a file that is there; what is no plain file is left alone. */
    public KeptFile(Path found) throws IOException {
        if (Files.isRegularFile(found, LinkOption.NOFOLLOW_LINKS)) {
            this.file = found;
            this.print = Print.of(found);
        }
    }

    /** Where it stands; empty before anything was written. */
    public Optional<Path> file() {
        return Optional.ofNullable(file);
    }

    /** Writes in the place of what was written before. */
    public void write(byte[] content, IntFunction<Path> names) throws IOException {
        Path before = file;
        Print known = print;
        if (before != null && known != null && known.isOf(before)) {
            Path aside = aside(before, content);
            try {
                Inside.moveOver(aside, before);
            } finally {
                Files.deleteIfExists(aside);
            }
            print = Print.of(content);
        } else {
            writeElsewhere(content, names);
        }
    }

    /**
     * Writes under a new name and takes away what was written before.
     *
     * @param names the names to try from 0 on, all of one folder; the first that is free is taken
     */
    public void writeElsewhere(byte[] content, IntFunction<Path> names) throws IOException {
        Path aside = aside(names.apply(0), content);
        try {
            Path taken = toFree(aside, names);
            delete();
            file = taken;
            print = Print.of(content);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private static Path toFree(Path aside, IntFunction<Path> names) throws IOException {
        for (int time = 0; ; time++) {
            try {
                Inside.moveToFree(aside, names.apply(time));
                return names.apply(time);
            } catch (FileAlreadyExistsException taken) {
                // The next name may be free.
            }
        }
    }

    private static Path aside(Path file, byte[] content) throws IOException {
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent());
        Files.createDirectories(folder);
        Path aside = folder.resolve(Exports.randomName());
        Exports.write(aside, content);
        return aside;
    }

    /** Deletes it, unless somebody else has changed it. */
    public void delete() throws IOException {
        Path before = file;
        Print known = print;
        if (before != null && known != null && known.isOf(before)) {
            Files.delete(before);
        }
        file = null;
        print = null;
    }
}
