package boltlore.desk.engineering;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Where an edited catalogue may lie: beside the catalogue of the desk, or anywhere below the folder that this one lies in.
 * Whoever sits at a browser reads nothing else of the machine, by whatever name, link or share; and what is elsewhere is
 * told in the same words, whether it is there or not.
 */
final class EditedFolder {

    /** Deeper than any catalogue. */
    private static final int DEEPEST = 6;

    private static final int MOST_KNOWN = 20;

    private static final int MOST_FILES = 20_000;

    private EditedFolder() {}

    /**
     * The folder that is meant, where it may be read.
     *
     * @param catalogue the desk's own
     * @param said an absolute path, or one from the folder that the desk's own catalogue lies in
     */
    static Outcome<Path> of(Path catalogue, String said) {
        try {
            Path own = catalogue.toAbsolutePath().normalize();
            Path home = own.getParent();
            if (home == null || home.getParent() == null || said.isBlank()) {
                return elsewhere(said);
            }
            // By its name alone at first: to ask for a share of another machine is to sign in there.
            Path named = home.resolve(said).normalize();
            if (!named.startsWith(home) && !named.startsWith(home.toRealPath())) {
                return elsewhere(said);
            }
            Path real = named.toRealPath();
            return real.startsWith(home.toRealPath()) && Files.isDirectory(real) && !leadsOut(real)
                    ? Outcome.sound(real)
                    : elsewhere(said);
        } catch (InvalidPathException | IOException | UncheckedIOException | SecurityException none) {
            return elsewhere(said);
        }
    }

    /** Names of the folders beside the desk's own that hold a catalogue: what is to be typed, or touched. */
    static List<String> beside(Path catalogue) {
        Path own = catalogue.toAbsolutePath().normalize();
        Path home = own.getParent();
        if (home == null || home.getParent() == null) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(home)) {
            return all.filter(each -> !each.equals(own)
                            && !Files.isSymbolicLink(each)
                            && Files.isDirectory(each.resolve("families"))
                            && Files.isDirectory(each.resolve("parts")))
                    .map(each -> each.getFileName().toString())
                    .sorted()
                    .limit(MOST_KNOWN)
                    .toList();
        } catch (IOException | UncheckedIOException | SecurityException unreadable) {
            return List.of();
        }
    }

    private static boolean leadsOut(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
            int seen = 0;
            for (Path each : (Iterable<Path>) all::iterator) {
                seen++;
                if (seen > MOST_FILES
                        || (Files.isSymbolicLink(each) && !each.toRealPath().startsWith(folder))) {
                    return true;
                }
            }
            return false;
        }
    }

    /** What becomes unreadable while it is read is a fault, too. */
    static <T> Outcome<T> read(Supplier<Outcome<T>> reading) {
        try {
            return reading.get();
        } catch (DirectoryIteratorException | UncheckedIOException | SecurityException unreadable) {
            return Outcome.faulty(Fault.of(
                    "Folder", "something that cannot be read", "files that this desk may read", "Look at its rights."));
        }
    }

    private static <T> Outcome<T> elsewhere(String said) {
        return Outcome.faulty(Fault.of(
                "Folder",
                "'" + said + "'",
                "the folder of an edited catalogue that stands beside the desk's own, without links that lead out of it",
                "Copy it there first."));
    }
}
