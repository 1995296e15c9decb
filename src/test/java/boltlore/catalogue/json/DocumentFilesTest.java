package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A document's file")
class DocumentFilesTest {

    @TempDir
    private Path temporary;

    private Path folder;
    private SmallCatalogue small;

    @BeforeEach
    void begin() {
        folder = temporary.resolve("catalogue");
        small = SmallCatalogue.in(folder);
    }

    @Test
    void is_not_a_link_that_leads_out_of_the_catalogue() throws IOException {
        Path outside = Files.writeString(temporary.resolve("secret.txt"), "not for the catalogue");
        Path file = folder.resolve("documents/motor.txt");
        Files.delete(file);
        Files.createSymbolicLink(file, outside);

        assertThat(small.faults())
                .extracting(fault -> fault.place() + " " + fault.found())
                .containsExactly(
                        "/parts/0/documents/0/file 'documents/motor.txt', which is a link that leads out of the folder");
    }

    @Test
    void does_not_lie_in_a_folder_that_is_a_link_out_of_the_catalogue() throws IOException {
        Path outside = Files.createDirectory(temporary.resolve("elsewhere"));
        Files.move(folder.resolve("documents/motor.txt"), outside.resolve("motor.txt"));
        Files.delete(folder.resolve("documents"));
        Files.createSymbolicLink(folder.resolve("documents"), outside);

        assertThat(small.faults()).hasSize(1);
    }

    @Test
    void may_be_a_link_within_the_catalogue() throws IOException {
        Path file = folder.resolve("documents/motor.txt");
        Files.move(file, folder.resolve("documents/motor-3.txt"));
        Files.createSymbolicLink(file, Path.of("motor-3.txt"));

        assertThat(small.faults()).isEmpty();
    }
}
