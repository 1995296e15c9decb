package boltlore.cli;

import boltlore.answers.OrderKit;
import boltlore.faults.Fault;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of one order file.
 *
 * @param written the sheets that were written, or empty
 * @param exit exit code that this file alone calls for
 */
record Finished(Path file, @Nullable OrderKit kit, List<Path> written, List<Fault> faults, int exit) {

    static Finished refused(Path file, List<Fault> faults, int exit) {
        return new Finished(file, null, List.of(), faults, exit);
    }
}
