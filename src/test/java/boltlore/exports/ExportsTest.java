package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Exports")
class ExportsTest {

    @TempDir
    Path exports;

    @Test
    @DisplayName("are written with their folders, and nothing is left beside them")
    void are_written() throws IOException {
        Outcome<List<Path>> written =
                Exports.write(folder(), List.of(file("bill.xlsx", "a"), file("csv/bill.csv", "b")));

        assertThat(written).isInstanceOf(Outcome.Sound.class);
        assertThat(Files.readString(folder().resolve("csv/bill.csv"))).isEqualTo("b");
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("replace the old sheets whole: what is no longer made is gone")
    void replace_the_old() throws IOException {
        Exports.write(folder(), List.of(file("json/old.json", "old")));
        Exports.write(folder(), List.of(file("json/new.json", "new")));

        assertThat(folder().resolve("json/new.json")).hasContent("new");
        assertThat(folder().resolve("json/old.json")).doesNotExist();
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("replace no folder that holds anything else: it stays as it was, and what it holds is named")
    void lose_nothing() throws IOException {
        Exports.write(folder(), List.of(file("bill.xlsx", "x"), file("json/bill.json", "old")));
        for (String mine :
                List.of("letter.odt", "bill.pdf", "mine.xlsx", "csv/mine.csv", "photos/1.csv", "json/n.txt")) {
            Path file = folder().resolve(mine);
            Files.createDirectories(file.getParent());
            Files.writeString(file, "mine");

            Outcome<List<Path>> written = Exports.write(folder(), List.of(file("json/bill.json", "new")));

            assertThat(written.faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).startsWith("'" + mine + "'"));
            assertThat(folder().resolve("json/bill.json")).hasContent("old");
            Files.delete(file);
        }
    }

    @Test
    @DisplayName("replace sheets beside which the system has left files of its own")
    void hidden_files_do_not_count() throws IOException {
        Exports.write(
                folder(),
                List.of(file("bill.xlsx", "x"), file("csv/bill-bill.csv", "c"), file("json/bill.json", "old")));
        Files.writeString(folder().resolve(".DS_Store"), "");
        Files.writeString(folder().resolve("Thumbs.db"), "");

        Exports.write(folder(), List.of(file("json/bill.json", "new")));

        assertThat(folder().resolve("json/bill.json")).hasContent("new");
        assertThat(folder().resolve("bill.xlsx")).doesNotExist();
    }

    @Test
    @DisplayName("of an order whose folder is a file are refused, and the file stays")
    void refuse_a_file() throws IOException {
        Files.writeString(folder(), "mine");

        Outcome<List<Path>> written = Exports.write(folder(), List.of(file("json/a.json", "a")));

        assertThat(written.faults()).hasSize(1);
        assertThat(folder()).hasContent("mine");
    }

    @Test
    @DisplayName("that cannot be written in the middle leave the old ones as they were")
    void keep_the_old_when_the_new_fail() throws IOException {
        Exports.write(folder(), List.of(file("json/a.json", "old")));

        Outcome<List<Path>> written =
                Exports.write(folder(), List.of(file("json/a.json", "new"), file("json/a.json/b.json", "impossible")));

        assertThat(written.faults()).hasSize(1);
        assertThat(folder().resolve("json/a.json")).hasContent("old");
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("to a place where nobody may write are refused in a sentence")
    void refuse_a_forbidden_place() {
        Outcome<List<Path>> written = Exports.write(Path.of("/proc/boltlore/BL-1"), List.of(file("json/a.json", "a")));

        assertThat(written.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo("/proc/boltlore/BL-1");
            assertThat(fault.found()).isEqualTo("a place where no folder can be made");
        });
    }

    @Test
    @DisplayName("of many runs at once into one folder end with the sheets of one run, whole")
    void many_runs_at_once() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            List<Future<Outcome<List<Path>>>> runs = IntStream.range(0, 1000)
                    .mapToObj(run -> pool.submit(() -> Exports.write(
                            folder(), List.of(file("json/a.json", "run " + run), file("json/b.json", "run " + run)))))
                    .toList();
            for (Future<Outcome<List<Path>>> run : runs) {
                assertThat(run.get()).isInstanceOf(Outcome.Sound.class);
            }
        } finally {
            pool.shutdown();
        }
        assertThat(folder().resolve("json/a.json")).hasSameTextualContentAs(folder().resolve("json/b.json"));
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("of a run that was killed while it wrote are swept by the next run")
    void sweep_what_a_dead_run_left() throws IOException {
        Files.createDirectories(exports.resolve(".BL-1.999999999.1.new"));

        Exports.write(folder(), List.of(file("json/a.json", "a")));

        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("that a killed run had moved away come back when the next run fails")
    void bring_back_what_a_dead_run_moved_away() throws IOException {
        Path old = exports.resolve(".BL-1.999999999.1.old");
        Files.createDirectories(old.resolve("json"));
        Files.writeString(old.resolve("json/a.json"), "old");

        Exports.write(folder(), List.of(file("x", "1"), file("x/y", "impossible")));

        assertThat(folder().resolve("json/a.json")).hasContent("old");
    }

    @Test
    @DisplayName("of another order that is being written are left alone")
    void leave_other_orders_alone() throws IOException {
        Path other = Files.createDirectories(exports.resolve(".BL-12.999999999.1.new"));

        Exports.write(folder(), List.of(file("json/a.json", "a")));

        assertThat(other).exists();
    }

    private Path folder() {
        return exports.resolve("BL-1");
    }

    private static SheetFile file(String name, String text) {
        return new SheetFile(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> inExports() throws IOException {
        try (Stream<Path> all = Files.list(exports)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
