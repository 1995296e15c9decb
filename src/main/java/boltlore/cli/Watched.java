package boltlore.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntSupplier;
import java.util.stream.Stream;

/**
 * A folder of files that somebody is working on. It is looked at several times a second, because notices of the operating
 * system are missing on network drives, and come twice from some editors.
 */
record Watched(Path folder) {

    private static final long EVERY_MILLIS = 150;

    /** Does it now and after each change, until the thread is interrupted; the exit code of the last time. */
    int each(IntSupplier work) {
        Map<Path, String> seen = seen();
        int exit = work.getAsInt();
        try {
            while (true) {
                Thread.sleep(EVERY_MILLIS);
                Map<Path, String> now = seen();
                if (!now.equals(seen)) {
                    seen = now;
                    exit = work.getAsInt();
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return exit;
        }
    }

    /** Time and size of each file; what cannot be looked at just now is looked at the next time. */
    private Map<Path, String> seen() {
        Map<Path, String> seen = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(file -> file.toString().endsWith(".json")).forEach(file -> seen.put(file, look(file)));
        } catch (IOException | UncheckedIOException changing) {
            seen.clear();
        }
        return seen;
    }

    private static String look(Path file) {
        try {
            return Files.getLastModifiedTime(file) + " " + Files.size(file);
        } catch (IOException gone) {
            return "";
        }
    }
}
