package boltlore.catalogue.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of slip in a catalogue is said with its place, and nothing else is said beside it. */
@DisplayName("Slips in a catalogue")
class SlipsTest {

    private static final Path SLIPS = Path.of("src/test/resources/slips");

    @TempDir
    private Path temporary;

    @TestFactory
    List<DynamicContainer> slips() throws IOException {
        try (Stream<Path> files = Files.list(SLIPS)) {
            return files.sorted().map(this::container).toList();
        }
    }

    private DynamicContainer container(Path file) {
        String name = file.getFileName().toString().replace(".txt", "");
        return DynamicContainer.dynamicContainer(
                name, Slip.readAll(file).stream().map(slip -> DynamicTest.dynamicTest(slip.says(), () -> check(slip))));
    }

    private void check(Slip slip) throws IOException {
        SmallCatalogue small = SmallCatalogue.in(Files.createTempDirectory(temporary, "slip"));
        slip.changes().forEach(change -> small.change(change.file(), change.from(), change.to()));
        assertThat(small.faults()).containsExactlyElementsOf(slip.faults());
    }
}
