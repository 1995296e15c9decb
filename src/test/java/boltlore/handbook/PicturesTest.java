package boltlore.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturesTest {

    @TempDir
    static Path folder;

    private static Path sheets = Path.of("");

    @BeforeAll
    static void write() {
        sheets = Pictures.written(folder);
    }

    /** Where one is stale: {@code mvn -q test-compile exec:exec@pictures}, and look at it. */
    @Test
    void each_picture_of_a_sheet_shows_what_the_demo_gives_today() throws IOException {
        assertThat(Pictures.sums(sheets)).isEqualTo(Files.readAllLines(Pictures.KEPT));
    }

    @Test
    void a_sheet_with_another_figure_makes_its_own_picture_stale_and_no_other() throws IOException {
        List<String> before = Pictures.sums(sheets);
        Path table;
        try (Stream<Path> tables = Files.list(sheets.resolve("csv"))) {
            table = tables.filter(each -> each.getFileName().toString().startsWith("cutting-list"))
                    .findFirst()
                    .orElseThrow();
        }
        String kept = Files.readString(table);
        Files.writeString(table, kept + "1\n");
        List<String> after = Pictures.sums(sheets);
        Files.writeString(table, kept);

        assertThat(after)
                .filteredOn(sum -> !before.contains(sum))
                .singleElement()
                .asString()
                .startsWith("cutting-list ");
    }

    @Test
    void the_README_shows_five_sheets() throws IOException {
        String readme = Files.readString(Path.of("README.md"));

        for (String sum : Files.readAllLines(Pictures.KEPT)) {
            String picture = "src/doc/" + sum.split(" ", -1)[0] + ".png";
            assertThat(readme).contains("](" + picture + ")");
            assertThat(Path.of(picture)).exists();
        }
        assertThat(Files.readAllLines(Pictures.KEPT)).hasSize(5);
    }
}
