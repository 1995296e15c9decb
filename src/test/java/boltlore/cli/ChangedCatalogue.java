package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The demo catalogue with one thing changed in it. */
final class ChangedCatalogue {

    private ChangedCatalogue() {}

    /**
     * Copies it.
     *
     * @param folder where its folder 'catalog' is made
     * @param file to change, from the catalogue's folder
     * @param from text that stands in that file
     */
    static Path in(Path folder, String file, String from, String to) throws IOException {
        Path copy = folder.resolve("catalog");
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(each, copy.resolve(Path.of("catalog").relativize(each)));
            }
        }
        String text = Files.readString(copy.resolve(file));
        assertThat(text).contains(from);
        Files.writeString(copy.resolve(file), text.replace(from, to));
        return copy;
    }
}
