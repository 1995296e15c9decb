package boltlore.json;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Reads a JSON file (RFC 8259) strictly; whatever is wrong with it comes back as faults, never as an exception. */
public final class JsonFile {

    /** Largest file that is opened at all: 8 MB, some ten thousand parts. */
    public static final long MOST_BYTES = 8L * 1024 * 1024;

    private JsonFile() {}

    /** The file's tree; messages name the file by its path as given. */
    public static Outcome<Json> read(Path file) {
        return bytes(file).then(bytes -> parse(file.toString(), bytes));
    }

    /** The tree of a JSON text that has already been read. */
    public static Outcome<Json> parse(String file, byte[] bytes) {
        return StrictText.decode(file, bytes).then(text -> new TreeBuilder(file).build(text));
    }

    /** The file's bytes, if it is a plain file of bearable size. */
    public static Outcome<byte[]> bytes(Path file) {
        String name = file.toString();
        try {
            if (!Files.exists(file)) {
                return Outcome.faulty(Fault.of(name, "nothing of that name", "a JSON file", "Check the path."));
            }
            if (Files.isDirectory(file)) {
                return Outcome.faulty(Fault.of(name, "a folder", "a JSON file", "Name a file in that folder."));
            }
            if (!Files.isRegularFile(file)) {
                return Outcome.faulty(Fault.of(name, "a device or pipe", "a JSON file", "Save it to a file first."));
            }
            long size = Files.size(file);
            return size > MOST_BYTES ? Outcome.faulty(tooLarge(name, size)) : readAll(file, name);
        } catch (IOException | SecurityException unreadable) {
            return Outcome.faulty(unreadable(name));
        }
    }

    private static Outcome<byte[]> readAll(Path file, String name) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            // A file may grow between looking and reading.
            byte[] bytes = in.readNBytes((int) MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? Outcome.faulty(tooLarge(name, bytes.length)) : Outcome.sound(bytes);
        }
    }

    private static Fault tooLarge(String name, long size) {
        return Fault.of(
                name,
                String.format(Locale.ROOT, "%,d bytes", size),
                "at most 8 MB",
                "Split the file, or check that it is the one you meant.");
    }

    private static Fault unreadable(String name) {
        return Fault.of(
                name,
                "a file that cannot be read",
                "a readable JSON file",
                "Check the permissions of file and folder.");
    }
}
