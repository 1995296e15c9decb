package boltlore.cli;

import boltlore.bring.Brought;
import boltlore.exports.KeptFile;
import boltlore.faults.Fault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** The file of a mapping, which holds all that people have answered: it is written anew only where something was added. */
record MappingKept(Path file) {

    /**
     * Keeps it.
     *
     * @param catalogue where the schemas stand beside the rest
     */
    List<Fault> keep(Brought brought, Path catalogue) {
        String text = brought.mappingText(way(catalogue.resolve("schema")));
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

    /** From the mapping's folder, with '/' between the steps. */
    private String way(Path schemas) {
        Path from = Objects.requireNonNull(file.toAbsolutePath().normalize().getParent());
        Path to = schemas.toAbsolutePath().normalize();
        return Objects.equals(from.getRoot(), to.getRoot())
                ? from.relativize(to).toString().replace('\\', '/')
                : to.toUri().toString().replaceFirst("/$", "");
    }
}
