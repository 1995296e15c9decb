package boltlore.exports;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What runs that were killed have left beside a folder. */
final class Leftovers {

    private Leftovers() {}

    /** Deletes what dead runs were writing; sheets that a dead run had moved away and not replaced come back. */
    static void sweep(Path target) throws IOException {
        for (Path folder : ofDeadRuns(target)) {
            if (folder.toString().endsWith(Aside.OLD) && !Files.exists(target)) {
                Files.move(folder, target);
            } else {
                delete(folder);
            }
        }
    }

    private static List<Path> ofDeadRuns(Path target) throws IOException {
        try (Stream<Path> beside = Files.list(Aside.parent(target))) {
            return beside.filter(folder -> isOfDeadRun(Aside.processOf(folder, target)))
                    .sorted()
                    .toList();
        }
    }

    private static boolean isOfDeadRun(Optional<Long> process) {
        return process.isPresent()
                && ProcessHandle.of(process.get())
                        .filter(ProcessHandle::isAlive)
                        .isEmpty();
    }

    /** Deletes a folder and all in it; what is already gone is fine. */
    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.deleteIfExists(path);
        }
    }
}
