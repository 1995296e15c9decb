package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.catalogue.Catalogue;
import boltlore.faults.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ExampleCatalogueTest {

    private final Outcome<Catalogue> read = CatalogueReader.read(Path.of("src/test/resources/example/catalog"));

    @Test
    @DisplayName("The worked example reads without a fault")
    void reads() {
        assertThat(read.faults()).isEmpty();
    }
}
