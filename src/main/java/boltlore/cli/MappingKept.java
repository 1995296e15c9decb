package boltlore.cli;

import boltlore.exports.KeptFile;
import boltlore.faults.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The file of a mapping, which holds all that people have answered: it is written anew only where something was added. */
record MappingKept(Path file) {

    List<Fault> keep(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try {
            if (!Files.exists(file) || !new String(Files.readAllBytes(file), StandardCharsets.UTF_8).equals(text)) {
                KeptFile kept = Files.exists(file) ? new KeptFile(file) : new KeptFile();
                kept.write(bytes, time -> time == 0 ? file : file.resolveSibling(time + "-" + file.getFileName()));
            }
            return List.of();
        } catch (IOException | SecurityException failure) {
            return List.of(Fault.of(
                    file.toString(),
                    "a place where the mapping cannot be kept",
                    "a folder that can be written to",
                    "Name another file with --mapping."));
        }
    }
}
