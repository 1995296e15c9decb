package boltlore.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.cli.CommandModel;
import boltlore.handbook.Handbook;
import boltlore.handbook.ManPage;
import boltlore.handbook.ZshCompletion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What makes two builds differ in most programs, looked for in one; {@code .ci/twice} builds twice and compares all bytes. */
@DisplayName("Nothing that the packages hold")
class SameBytesTest {

    private static final LocalDateTime BEGINNING = LocalDateTime.of(2026, 1, 1, 0, 0);

    @TempDir
    private Path folder;

    @Test
    void is_other_when_it_is_written_again_elsewhere() throws IOException {
        SortedMap<String, String> once = furnished(folder.resolve("one"));
        SortedMap<String, String> again = furnished(folder.resolve("another folder/deeper"));

        assertThat(once).hasSizeGreaterThan(20).isEqualTo(again);
    }

    private static SortedMap<String, String> furnished(Path home) throws IOException {
        Handbook.write(home.resolve("docs"));
        ManPage.writeAll(home.resolve("man"));
        Files.writeString(home.resolve("_boltlore"), ZshCompletion.of(CommandModel.whole()));
        SortedMap<String, String> bytes = new TreeMap<>();
        try (Stream<Path> all = Files.walk(home)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                bytes.put(home.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return bytes;
    }

    @Test
    void tells_when_or_where_it_was_built() throws IOException {
        String here = Path.of("").toAbsolutePath().toString();
        try (ZipFile jar = new ZipFile("target/boltlore/lib/boltlore.jar")) {
            for (ZipEntry entry : jar.stream().toList()) {
                assertThat(entry.getTimeLocal()).as(entry.getName()).isEqualTo(BEGINNING);
                String bytes = new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1);
                assertThat(bytes.contains(here)).as(entry.getName()).isFalse();
            }
        }
    }

    @Test
    void hangs_on_which_thread_loaded_a_class_first() throws IOException {
        Path one = Files.write(folder.resolve("one"), List.of("b/B", "@lambda-proxy a/A", "a/A", "b/B"));
        Path other = Files.write(folder.resolve("other"), List.of("a/A", "b/B", "@lambda-proxy a/A"));

        Furnishing.settle(one);
        Furnishing.settle(other);

        assertThat(one).hasSameTextualContentAs(other).hasContent("a/A\nb/B\n@lambda-proxy a/A");
    }
}
