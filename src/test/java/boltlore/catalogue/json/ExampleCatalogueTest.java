package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Catalogues that read without a fault")
class ExampleCatalogueTest {

    @Test
    @DisplayName("The worked example")
    void example() {
        assertThat(CatalogueReader.read(Path.of("src/test/resources/example/catalog"))
                        .faults())
                .isEmpty();
    }

    @Test
    @DisplayName("The shipped demo")
    void demo() {
        assertThat(CatalogueReader.read(Path.of("catalog")).faults()).isEmpty();
    }
}
