package boltlore.cli;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and moves it there, so that nobody ever reads half of one. */
final class WrittenAside {

    private WrittenAside() {}

    static Outcome<Path> write(Path file, byte[] content) {
        Path whole = file.toAbsolutePath();
        Path aside = whole.resolveSibling("." + whole.getFileName() + ".new");
        try {
            Files.createDirectories(whole.getParent());
            Files.write(aside, content);
            Files.move(aside, whole, StandardCopyOption.REPLACE_EXISTING);
            return Outcome.sound(file);
        } catch (IOException e) {
            return Outcome.faulty(
                    Fault.of(file.toString(), "a place that cannot be written", "a folder that you may write to", ""));
        }
    }
}
