package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which catalogue a command works with. */
final class CatalogueOption {

    @Option(
            names = "--catalogue",
            paramLabel = "FOLDER",
            description = "The catalogue's folder; without it the folder 'catalog' here.")
    private @Nullable Path folder;

    Outcome<Catalogue> read() {
        return CatalogueReader.read(folder());
    }

    Path folder() {
        return folder == null ? Path.of("catalog") : folder;
    }
}
