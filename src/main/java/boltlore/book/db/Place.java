package boltlore.book.db;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where a book is kept: one file, or a database on a server that several desks share. */
public sealed interface Place {

    /** The environment variable that names the book where no option does. */
    String VARIABLE = "BOLTLORE_BOOK";

    /**
     * One file.
     *
     * @param path the file; beside it SQLite keeps {@code -wal} and {@code -shm} while it is in use
     */
    record InFile(Path path) implements Place {

        /** What tells this file from another of its name, where the system has such a thing; null where it is not there. */
        @Nullable
        Object identity() {
            try {
                BasicFileAttributes there = Files.readAttributes(path, BasicFileAttributes.class);
                return there.fileKey() == null ? path : there.fileKey();
            } catch (IOException gone) {
                return null;
            }
        }

        /** Where SQLite writes first; while a book is open it is there. */
        Path ahead() {
            return path.resolveSibling(path.getFileName() + "-wal");
        }

        @Override
        public String shown() {
            return path.toString();
        }
    }

    /**
     * A database on a server.
     *
     * @param url JDBC URL, which may hold a user and a password
     */
    record OnServer(String url) implements Place {
        @Override
        public String shown() {
            return url.replaceFirst("\\?.*", "").replaceFirst("//[^/@]*@", "//");
        }

        /** The URL itself may hold a password. */
        @Override
        public String toString() {
            return shown();
        }
    }

    /** As it may be told to anybody: without user and password. */
    String shown();

    /**
     * The place that was asked for.
     *
     * @param asked a file or JDBC URL, or null; then the environment says, or else the user's own data folder
     */
    static Outcome<Place> of(@Nullable String asked, Map<String, String> environment) {
        String written = asked != null ? asked : environment.getOrDefault(VARIABLE, "");
        if (asked == null && written.isEmpty()) {
            return Outcome.sound(new InFile(usual(environment)));
        }
        String lower = written.toLowerCase(Locale.ROOT);
        if (lower.startsWith("jdbc:postgresql:")) {
            return Outcome.sound(new OnServer(written));
        }
        String path = lower.startsWith("jdbc:sqlite:") ? written.substring("jdbc:sqlite:".length()) : written;
        if (path.isBlank() || (lower.startsWith("jdbc:") && !lower.startsWith("jdbc:sqlite:"))) {
            return Outcome.faulty(refused(written));
        }
        try {
            return Outcome.sound(new InFile(Path.of(path)));
        } catch (InvalidPathException none) {
            return Outcome.faulty(refused("a name that no file can have here"));
        }
    }

    private static Fault refused(String found) {
        return Fault.of(
                "--book",
                found.isBlank() ? "no name at all" : "'" + found.replaceFirst("\\?.*", "?…") + "'",
                "a file, or a URL that begins with jdbc:postgresql:",
                "Name one with --book or in " + VARIABLE + ".");
    }

    /** The XDG base directory specification's folder for a user's data. */
    private static Path usual(Map<String, String> environment) {
        String data = environment.getOrDefault("XDG_DATA_HOME", "");
        String home = environment.getOrDefault("HOME", environment.getOrDefault("USERPROFILE", ""));
        Path folder = data.isEmpty() ? Path.of(home, ".local", "share") : Path.of(data);
        return folder.resolve("boltlore").resolve("book.db");
    }
}
