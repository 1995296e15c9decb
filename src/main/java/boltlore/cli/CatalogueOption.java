package boltlore.cli;

import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which catalogue a command works with. */
final class CatalogueOption {

    @Option(
            names = "--catalog",
            paramLabel = "FOLDER",
            description =
                    "The catalogue's folder; without it the folder 'catalog' here, or the one beside the program.")
    private @Nullable Path folder;

    Outcome<Catalogue> read() {
        return CatalogueReader.read(folder());
    }

    Path folder() {
        if (folder != null) {
            return folder;
        }
        Path here = Path.of("catalog");
        String home = System.getProperty("boltlore.home", "");
        return Files.isDirectory(here) || home.isEmpty() ? here : Path.of(home, "catalog");
    }
}
