package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Exports")
class ExportsTest {

    @TempDir
    Path exports;

    @Test
    @DisplayName("are written with their folders, and nothing is left beside them")
    void are_written() throws IOException {
        Written written = written(file("bill.xlsx", "a"), file("csv/bill.csv", "b"));

        assertThat(written.files()).containsExactly(place("bill.xlsx"), place("csv/bill.csv"));
        assertThat(written.kept()).isEmpty();
        assertThat(place("csv/bill.csv")).hasContent("b");
        assertThat(names(exports)).containsExactly("BL-1");
        assertThat(names(place(".boltlore"))).containsExactly("written.json");
    }

    @Test
    @DisplayName("replace the old sheets whole: what is no longer made is gone, with the folder that it leaves empty")
    void replace_the_old() throws IOException {
        written(file("json/old.json", "old"), file("bill.xlsx", "old"));
        written(file("csv/new.csv", "new"), file("bill.xlsx", "new"));

        assertThat(place("csv/new.csv")).hasContent("new");
        assertThat(place("bill.xlsx")).hasContent("new");
        assertThat(place("json")).doesNotExist();
        assertThat(names(exports)).containsExactly("BL-1");
        assertThat(names(place(".boltlore"))).containsExactly("written.json");
    }

    @Test
    @DisplayName("leave a file that is made again as it was untouched")
    void leave_what_is_the_same() throws IOException {
        written(file("bill.xlsx", "same"));
        Object before = Files.readAttributes(place("bill.xlsx"), "*").get("lastModifiedTime");
        Path key = Files.createLink(exports.resolve("same-file"), place("bill.xlsx"));

        written(file("bill.xlsx", "same"), file("other.xlsx", "new"));

        assertThat(Files.isSameFile(key, place("bill.xlsx"))).isTrue();
        assertThat(Files.readAttributes(place("bill.xlsx"), "*")).containsEntry("lastModifiedTime", before);
    }

    @Test
    @DisplayName("never replace what somebody has changed: the new sheet comes beside it, and a sentence says so")
    void keep_what_was_changed() throws IOException {
        written(file("csv/film.csv", "empty"));
        Files.writeString(place("csv/film.csv"), "70 71 72");

        Written second = written(file("csv/film.csv", "empty, newer"));

        assertThat(place("csv/film.csv")).hasContent("70 71 72");
        assertThat(place("csv/film.new.csv")).hasContent("empty, newer");
        assertThat(second.files()).containsExactly(place("csv/film.new.csv"));
        assertThat(second.kept())
                .containsExactly(place("csv/film.csv")
                        + " was changed after it was written: it stays as it is, and what is new is film.new.csv"
                        + " beside it.");
    }

    @Test
    @DisplayName("keep every changed one of any number of runs, and replace the newest where nobody has touched it")
    void keep_all_that_was_changed() throws IOException {
        written(file("film.csv", "1"));
        Files.writeString(place("film.csv"), "mine");
        written(file("film.csv", "2"));
        written(file("film.csv", "3"));
        assertThat(place("film.new.csv")).hasContent("3");
        Files.writeString(place("film.new.csv"), "mine too");

        Written last = written(file("film.csv", "4"));

        assertThat(place("film.csv")).hasContent("mine");
        assertThat(place("film.new.csv")).hasContent("mine too");
        assertThat(place("film.new-2.csv")).hasContent("4");
        assertThat(last.kept()).hasSize(2);
    }

    @Test
    @DisplayName("write no second sheet where the changed one was made from just this one")
    void no_copy_of_the_same() throws IOException {
        written(file("film.csv", "empty"));
        Files.writeString(place("film.csv"), "70 71 72");

        Written second = written(file("film.csv", "empty"));

        assertThat(names(place(""))).containsExactly(".boltlore", "film.csv");
        assertThat(second.files()).containsExactly(place("film.csv"));
        assertThat(second.kept())
                .containsExactly(place("film.csv") + " was changed after it was written: it stays as it is.");
    }

    @Test
    @DisplayName("keep a changed sheet that is made no more")
    void keep_what_is_stale_and_changed() throws IOException {
        written(file("film.csv", "empty"), file("stale.csv", "x"));
        Files.writeString(place("film.csv"), "70 71 72");

        Written second = written(file("bill.csv", "b"));

        assertThat(place("film.csv")).hasContent("70 71 72");
        assertThat(place("stale.csv")).doesNotExist();
        assertThat(second.kept()).singleElement().asString().contains("film.csv");
        assertThat(written(file("bill.csv", "c")).kept()).hasSize(1);
    }

    @Test
    @DisplayName("leave a person's own files where they are, whatever they are called")
    void lose_nothing() throws IOException {
        written(file("bill.xlsx", "x"), file("json/bill.json", "old"));
        List<String> own = List.of(
                "letter.odt",
                "bill.pdf",
                "mine.xlsx",
                "csv/mine.csv",
                "csv/bill-mine.csv",
                "json/mine.json",
                "photos/1.csv",
                ".notes",
                "bill.new.xlsx");
        for (String mine : own) {
            Files.createDirectories(place(mine).getParent());
            Files.writeString(place(mine), "mine");
        }

        written(file("json/bill.json", "new"));

        assertThat(place("json/bill.json")).hasContent("new");
        assertThat(place("bill.xlsx")).doesNotExist();
        assertThat(own).allSatisfy(mine -> assertThat(place(mine)).hasContent("mine"));
    }

    @Test
    @DisplayName(
            "are refused where something stands in their place that the program never wrote, and all stays as it was")
    void refuse_what_is_in_the_way() throws IOException {
        written(file("bill.xlsx", "x"));
        Files.writeString(place("list.xlsx"), "mine");

        Outcome<Written> outcome = write("kit", file("bill.xlsx", "y"), file("list.xlsx", "l"));

        assertThat(outcome.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo(place("list.xlsx").toString());
            assertThat(fault.found()).isEqualTo("something that this program has not written");
            assertThat(fault.advice()).contains("nothing was changed");
        });
        assertThat(place("bill.xlsx")).hasContent("x");
        assertThat(place("list.xlsx")).hasContent("mine");
    }

    @Test
    @DisplayName("take a file for the program's own that has exactly the bytes that it writes")
    void adopt_the_same_bytes() throws IOException {
        Files.createDirectories(place(""));
        Files.writeString(place("bill.xlsx"), "x");

        written(file("bill.xlsx", "x"));
        written(file("bill.xlsx", "y"));

        assertThat(place("bill.xlsx")).hasContent("y");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bill.xlsx", "csv", ".boltlore"})
    @DisplayName("never follow a link")
    void follow_no_link(String link) throws IOException {
        Path victim = Files.createDirectory(exports.resolve("victim"));
        Files.writeString(victim.resolve("bill.csv"), "mine");
        Files.createDirectories(place(""));
        Files.createSymbolicLink(place(link), link.endsWith("xlsx") ? victim.resolve("bill.csv") : victim);

        Outcome<Written> outcome = write("kit", file("bill.xlsx", "x"), file("csv/bill.csv", "y"));

        assertThat(outcome.faults()).isNotEmpty();
        assertThat(names(victim)).containsExactly("bill.csv");
        assertThat(victim.resolve("bill.csv")).hasContent("mine");
    }

    @Test
    @DisplayName("of other kinds of run in the same folder stay, and each kind replaces its own")
    void leave_other_kinds() throws IOException {
        write("kit", file("bill.xlsx", "1"), file("json/bill.json", "1"));
        write("axle-loads", file("weights.xlsx", "1"), file("json/weights.json", "1"));
        write("kit", file("bill.xlsx", "2"));

        assertThat(place("bill.xlsx")).hasContent("2");
        assertThat(place("weights.xlsx")).hasContent("1");
        assertThat(names(place("json"))).containsExactly("weights.json");
    }

    @Test
    @DisplayName(
            "of another kind of run are never replaced: the new sheet comes beside them, and a sentence says whose they are")
    void leave_what_another_kind_wrote_under_the_same_name() throws IOException {
        of("kit", "BL-1", file("batch.xlsx", "1"));

        Written first = of("coat", "BL-2", file("batch.xlsx", "2"));
        Written second = of("coat", "BL-2", file("batch.xlsx", "3"));

        assertThat(place("batch.xlsx")).hasContent("1");
        assertThat(place("batch.new.xlsx")).hasContent("3");
        assertThat(first.kept())
                .containsExactly(
                        place("batch.xlsx")
                                + " was written by 'kit' of BL-1: it stays as it is, and what is new is batch.new.xlsx beside it.");
        assertThat(second.kept()).hasSize(1);
        assertThat(of("kit", "BL-1", file("batch.xlsx", "4")).kept()).isEmpty();
        assertThat(place("batch.xlsx")).hasContent("4");
        assertThat(place("batch.new.xlsx")).hasContent("3");
    }

    @Test
    @DisplayName("of another kind of run that are just the same stay that run's own")
    void the_same_stays_whose_it_is() throws IOException {
        of("kit", "BL-1", file("batch.xlsx", "1"));
        assertThat(of("coat", "BL-1", file("batch.xlsx", "1")).kept()).isEmpty();

        assertThat(of("kit", "BL-1", file("batch.xlsx", "2")).kept()).isEmpty();
        assertThat(names(place(""))).containsExactly(".boltlore", "batch.xlsx");
    }

    @Test
    @DisplayName("of other orders make room for those of the same kind of run, but not without a word")
    void tell_of_other_orders() throws IOException {
        of("coat", "BL-1", file("batch.xlsx", "1"), file("csv/batch.csv", "1"));

        assertThat(of("coat", "BL-2", file("batch.xlsx", "2"), file("csv/batch.csv", "2"))
                        .kept())
                .containsExactly("In " + place("") + " the sheets of BL-1 have made room for those of BL-2.");
        assertThat(of("coat", "BL-2", file("batch.xlsx", "3"), file("csv/batch.csv", "2"))
                        .kept())
                .isEmpty();
    }

    @Test
    @DisplayName("as one file never take the place of what another kind of run wrote")
    void one_file_of_another_kind() throws IOException {
        Path file = exports.resolve("left.json");
        Exports.file(file, "cut --left", bytes("1"));

        assertThat(Exports.file(file, "prove --report", bytes("2")).faults())
                .singleElement()
                .satisfies(
                        fault -> assertThat(fault.found()).isEqualTo("a file that 'cut --left left.json' has written"));
        assertThat(file).hasContent("1");
    }

    private Written of(String kind, String order, SheetFile... files) {
        Outcome<Written> outcome =
                Exports.write(place(""), List.of(new SheetSet(kind, List.of(order), Arrays.asList(files), true)));
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<Written>) outcome).value();
    }

    @Test
    @DisplayName("that are not all there take no earlier ones away")
    void incomplete_sets_remove_nothing() throws IOException {
        write("kit", file("bill.xlsx", "1"), file("quotation.xlsx", "1"));

        Exports.write(place(""), List.of(new SheetSet("kit", List.of(file("bill.xlsx", "2")), false)));

        assertThat(place("bill.xlsx")).hasContent("2");
        assertThat(place("quotation.xlsx")).hasContent("1");
    }

    @Test
    @DisplayName("are refused in a folder whose list of what was written is damaged or leads elsewhere")
    void distrust_a_damaged_list() throws IOException {
        for (String list : List.of(
                "",
                "{\"format\": 2, \"sets\": []}",
                "{\"format\": 1, \"sets\": [{\"set\": \"kit\", \"files\": [{\"file\": \"../victim\", \"length\": 0,"
                        + " \"sha256\": \"" + Print.of(new byte[0]).sha256() + "\"}]}]}")) {
            written(file("bill.xlsx", "1"));
            Path victim = Files.writeString(exports.resolve("victim"), "");
            Files.writeString(place(".boltlore/written.json"), list);

            List<Fault> faults = write("kit", file("bill.xlsx", "2")).faults();

            assertThat(faults)
                    .singleElement()
                    .satisfies(fault ->
                            assertThat(fault.found()).isEqualTo("a list of what was written here that cannot be read"));
            assertThat(place("bill.xlsx")).hasContent("1");
            assertThat(victim).exists();
            Inside.delete(place(""));
        }
    }

    @Test
    @DisplayName("of an order whose folder is a file are refused, and the file stays")
    void refuse_a_file() throws IOException {
        Files.writeString(place(""), "mine");

        assertThat(write("kit", file("json/a.json", "a")).faults()).hasSize(1);
        assertThat(place("")).hasContent("mine");
    }

    @Test
    @DisplayName("that cannot be written in the middle leave the old ones as they were")
    void keep_the_old_when_the_new_fail() throws IOException {
        written(file("json/a.json", "old"));

        Outcome<Written> outcome = write("kit", file("json/a.json", "new"), file("json/a.json/b.json", "impossible"));

        assertThat(outcome.faults()).hasSize(1);
        assertThat(place("json/a.json")).hasContent("old");
        assertThat(names(exports)).containsExactly("BL-1");
        assertThat(names(place(".boltlore"))).containsExactly("written.json");
    }

    @Test
    @DisplayName("that cannot be written leave neither the folder nor those on the way to it")
    void leave_nothing_of_what_fails() throws IOException {
        Path deep = exports.resolve("a/b/BL-1");

        Outcome<Written> outcome = Exports.write(
                deep, List.of(new SheetSet("kit", List.of(file("x", "1"), file("x/y", "impossible")), true)));

        assertThat(outcome.faults()).hasSize(1);
        assertThat(names(exports)).isEmpty();
    }

    @Test
    @DisplayName("to a place where nobody may write are refused in a sentence")
    void refuse_a_forbidden_place() {
        Outcome<Written> written = Exports.write(
                Path.of("/proc/boltlore/BL-1"), List.of(new SheetSet("kit", List.of(file("json/a.json", "a")), true)));

        assertThat(written.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo("/proc/boltlore/BL-1");
            assertThat(fault.found()).isEqualTo("a place where no folder can be made");
        });
    }

    @Test
    @DisplayName("into a folder that may only be read are refused in a sentence, and all stays as it was")
    void refuse_a_folder_that_may_only_be_read() throws IOException {
        written(file("bill.xlsx", "1"));
        try {
            assertThat(place(".boltlore").toFile().setWritable(false)).isTrue();
            assertThat(place("").toFile().setWritable(false)).isTrue();
            assumeThat(Files.isWritable(place("")))
                    .as("whether this user may write everywhere")
                    .isFalse();

            assertThat(write("kit", file("bill.xlsx", "2")).faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found()).isEqualTo("no permission to write here"));
            assertThat(place("bill.xlsx")).hasContent("1");
            assertThat(names(place(".boltlore"))).containsExactly("written.json");
        } finally {
            assertThat(place("").toFile().setWritable(true)).isTrue();
            assertThat(place(".boltlore").toFile().setWritable(true)).isTrue();
        }
    }

    @Test
    @DisplayName("into a folder in which one sheet may not be read are refused, and the sheet is named")
    void name_what_may_not_be_read() throws IOException {
        written(file("bill.xlsx", "1"), file("csv/a.csv", "1"));
        try {
            assertThat(place("bill.xlsx").toFile().setReadable(false)).isTrue();
            assumeThat(Files.isReadable(place("bill.xlsx")))
                    .as("whether this user may read everything")
                    .isFalse();

            assertThat(write("kit", file("bill.xlsx", "2")).faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found())
                            .startsWith("no permission for ")
                            .endsWith("bill.xlsx"));
        } finally {
            assertThat(place("bill.xlsx").toFile().setReadable(true)).isTrue();
        }
    }

    @Test
    @DisplayName("below a file are refused, and the file is named")
    void below_a_file() throws IOException {
        Path file = Files.writeString(place("").resolveSibling("afile"), "mine");

        for (Path below : List.of(file.resolve("BL-1"), file.resolve("x/BL-1"))) {
            assertThat(Exports.write(below, List.of(new SheetSet("kit", List.of(file("a", "1")), true)))
                            .faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.found())
                            .startsWith("a file where a folder should be: ")
                            .endsWith("afile"));
        }
        assertThat(file).hasContent("mine");
    }

    @Test
    @DisplayName("of many runs at once into one folder end with the sheets of one run, whole")
    void many_runs_at_once() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(8);
        try {
            List<Future<Outcome<Written>>> runs = IntStream.range(0, 1000)
                    .mapToObj(run ->
                            pool.submit(() -> write("kit", file("json/a.json", "run " + run), file("b", "run " + run))))
                    .toList();
            for (Future<Outcome<Written>> run : runs) {
                assertThat(run.get()).isInstanceOf(Outcome.Sound.class);
            }
        } finally {
            pool.shutdown();
        }
        assertThat(place("json/a.json")).hasSameTextualContentAs(place("b"));
        assertThat(names(exports)).containsExactly("BL-1");
    }

    @Test
    @DisplayName(
            "as one file are replaced under their own name, and refused where the file was changed or is another's")
    void one_file() throws IOException {
        Path file = exports.resolve("left.json");
        assertThat(Exports.file(file, "cut --left", bytes("1"))).isInstanceOf(Outcome.Sound.class);
        assertThat(Exports.file(exports.resolve("left-2.json"), "cut --left", bytes("1")))
                .isInstanceOf(Outcome.Sound.class);
        assertThat(Exports.file(file, "cut --left", bytes("2"))).isInstanceOf(Outcome.Sound.class);
        assertThat(file).hasContent("2");

        Files.writeString(file, "mine");
        for (String next : List.of("2", "3")) {
            assertThat(Exports.file(file, "cut --left", bytes(next)).faults())
                    .singleElement()
                    .satisfies(fault ->
                            assertThat(fault.found()).isEqualTo("a file that was changed after it was written"));
        }
        Path order = Files.writeString(exports.resolve("order.json"), "mine");
        assertThat(Exports.file(order, "cut --left", bytes("3")).faults()).hasSize(1);

        assertThat(file).hasContent("mine");
        assertThat(order).hasContent("mine");
        assertThat(names(exports)).containsExactly(".boltlore", "left-2.json", "left.json", "order.json");
    }

    @Test
    @DisplayName("as a new file never take the place of another, nor of a link that leads nowhere")
    void a_new_file() throws IOException {
        Path file = exports.resolve("orders/a.json");
        assertThat(Exports.newFile(file, bytes("1"))).isInstanceOf(Outcome.Sound.class);
        assertThat(Exports.newFile(file, bytes("2")).faults()).hasSize(1);
        Path link = Files.createSymbolicLink(exports.resolve("orders/b.json"), exports.resolve("victim"));
        assertThat(Exports.newFile(link, bytes("2")).faults()).hasSize(1);

        assertThat(file).hasContent("1");
        assertThat(names(exports)).containsExactly("orders");
        assertThat(names(exports.resolve("orders"))).containsExactly("a.json", "b.json");
    }

    private Path place(String name) {
        return name.isEmpty()
                ? exports.resolve("BL-1")
                : exports.resolve("BL-1").resolve(name);
    }

    private Written written(SheetFile... files) {
        Outcome<Written> outcome = write("kit", files);
        assertThat(outcome.faults()).isEmpty();
        return ((Outcome.Sound<Written>) outcome).value();
    }

    private Outcome<Written> write(String kind, SheetFile... files) {
        return Exports.write(place(""), List.of(new SheetSet(kind, Arrays.asList(files), true)));
    }

    private static SheetFile file(String name, String text) {
        return SheetFile.utf8(name, text);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
