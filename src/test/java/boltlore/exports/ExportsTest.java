package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import boltlore.sheets.SheetFile;
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
        Exports.write(folder(), List.of(file("old.csv", "old")));
        Exports.write(folder(), List.of(file("new.csv", "new")));

        assertThat(folder().resolve("new.csv")).hasContent("new");
        assertThat(folder().resolve("old.csv")).doesNotExist();
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("of an order whose folder is a file are refused, and the file stays")
    void refuse_a_file() throws IOException {
        Files.writeString(folder(), "mine");

        Outcome<List<Path>> written = Exports.write(folder(), List.of(file("a.csv", "a")));

        assertThat(written.faults()).hasSize(1);
        assertThat(folder()).hasContent("mine");
    }

    @Test
    @DisplayName("that cannot be written in the middle leave the old ones as they were")
    void keep_the_old_when_the_new_fail() throws IOException {
        Exports.write(folder(), List.of(file("a.csv", "old")));

        Outcome<List<Path>> written =
                Exports.write(folder(), List.of(file("a.csv", "new"), file("a.csv/b.csv", "impossible")));

        assertThat(written.faults()).hasSize(1);
        assertThat(folder().resolve("a.csv")).hasContent("old");
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("to a place where nobody may write are refused in a sentence")
    void refuse_a_forbidden_place() {
        Outcome<List<Path>> written = Exports.write(Path.of("/proc/boltlore/BL-1"), List.of(file("a.csv", "a")));

        assertThat(written.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.file()).isEqualTo("/proc/boltlore/BL-1"));
    }

    @Test
    @DisplayName("of many runs at once into one folder end with the sheets of one run, whole")
    void many_runs_at_once() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            List<Future<Outcome<List<Path>>>> runs = IntStream.range(0, 1000)
                    .mapToObj(run -> pool.submit(() ->
                            Exports.write(folder(), List.of(file("a.csv", "run " + run), file("b.csv", "run " + run)))))
                    .toList();
            for (Future<Outcome<List<Path>>> run : runs) {
                assertThat(run.get()).isInstanceOf(Outcome.Sound.class);
            }
        } finally {
            pool.shutdown();
        }
        assertThat(folder().resolve("a.csv")).hasSameTextualContentAs(folder().resolve("b.csv"));
        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("of a run that was killed while it wrote are swept by the next run")
    void sweep_what_a_dead_run_left() throws IOException {
        Files.createDirectories(exports.resolve(".BL-1.999999999.1.new"));

        Exports.write(folder(), List.of(file("a.csv", "a")));

        assertThat(inExports()).containsExactly("BL-1");
    }

    @Test
    @DisplayName("that a killed run had moved away come back when the next run fails")
    void bring_back_what_a_dead_run_moved_away() throws IOException {
        Path old = Files.createDirectories(exports.resolve(".BL-1.999999999.1.old"));
        Files.writeString(old.resolve("a.csv"), "old");

        Exports.write(folder(), List.of(file("x", "1"), file("x/y", "impossible")));

        assertThat(folder().resolve("a.csv")).hasContent("old");
    }

    @Test
    @DisplayName("of another order that is being written are left alone")
    void leave_other_orders_alone() throws IOException {
        Path other = Files.createDirectories(exports.resolve(".BL-12.999999999.1.new"));

        Exports.write(folder(), List.of(file("a.csv", "a")));

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
