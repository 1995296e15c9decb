package boltlore.exports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Names of the folders that a run keeps beside its target: {@code .BL-1001.4711.….new} while it writes, {@code ….old}
 * while the old sheets make room. The number is the run's process, so that a later run knows whose is left over.
 */
final class Aside {

    static final String NEW = ".new";
    static final String OLD = ".old";

    private static final AtomicLong RUNS = new AtomicLong();

    private Aside() {}

    /** A new folder, with the permissions that any new folder gets here. */
    static Path folderFor(Path target) throws IOException {
        String unique = ProcessHandle.current().pid() + "." + RUNS.incrementAndGet();
        return Files.createDirectory(parent(target).resolve(prefix(target) + unique + NEW));
    }

    static Path oldFor(Path aside) {
        String name = aside.getFileName().toString();
        return aside.resolveSibling(name.substring(0, name.length() - NEW.length()) + OLD);
    }

    static Path parent(Path target) {
        Path parent = target.getParent();
        return parent == null ? target : parent;
    }

    static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }

    /** The process that made the folder, where it is one of the target's. */
    static Optional<Long> processOf(Path folder, Path target) {
        String name = folder.getFileName().toString();
        if (!name.startsWith(prefix(target)) || !(name.endsWith(NEW) || name.endsWith(OLD))) {
            return Optional.empty();
        }
        String rest = name.substring(prefix(target).length());
        String digits = rest.substring(0, Math.max(0, rest.indexOf('.')));
        return digits.matches("[0-9]{1,18}") ? Optional.of(Long.valueOf(digits)) : Optional.empty();
    }
}
