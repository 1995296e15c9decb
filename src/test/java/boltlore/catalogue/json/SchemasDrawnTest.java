package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The shipped schemas are drawn from the program's own readers")
class SchemasDrawnTest {

    private static final Path DRAWN = Path.of("target/schema");

    @TempDir
    private Path folder;

    /** Copy what this test leaves in target/schema to catalog/schema where the two differ on purpose. */
    @Test
    void as_they_stand_in_the_catalogue() throws IOException {
        Map<String, String> texts = drawn().texts();
        Files.createDirectories(DRAWN);
        for (Map.Entry<String, String> schema : texts.entrySet()) {
            Files.writeString(DRAWN.resolve(schema.getKey()), schema.getValue());
        }
        for (Map.Entry<String, String> schema : texts.entrySet()) {
            assertThat(Schemas.FOLDER.resolve(schema.getKey()))
                    .as("stale: copy %s/*.json to %s", DRAWN, Schemas.FOLDER)
                    .hasContent(schema.getValue());
        }
        List<String> shipped = Schemas.files().stream()
                .map(file -> file.getFileName().toString())
                .toList();
        assertThat(shipped).containsExactlyElementsOf(texts.keySet());
    }

    @Test
    void every_key_is_described_and_no_description_is_left_over() {
        DrawnSchemas drawn = drawn();
        assertThat(drawn.descriptions().missing()).isEmpty();
        assertThat(drawn.descriptions().unused()).isEmpty();
    }

    private DrawnSchemas drawn() {
        return new DrawnSchemas(SmallCatalogue.in(folder).catalogue());
    }
}
