package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.faults.Outcome;
import boltlore.report.SheetFile;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the next run makes of what a killed one has left, step by step. */
@DisplayName("A run that was killed")
class KilledRunTest {

    private static final List<SheetFile> OLD =
            List.of(SheetFile.utf8("a", "old"), SheetFile.utf8("csv/b", "old"), SheetFile.utf8("stale/c", "old"));
    private static final List<SheetFile> NEW =
            List.of(SheetFile.utf8("a", "new"), SheetFile.utf8("csv/b", "new"), SheetFile.utf8("fresh/d", "new"));
    private static final int STEPS = 3 + 3 + 1;

    @TempDir
    Path temp;

    private Path exports;
    private Inside folder;

    @BeforeEach
    void old_sheets() throws IOException {
        exports = Files.createDirectory(temp.toRealPath().resolve("made"));
        folder = new Inside(exports.resolve("BL-1"));
        Exports.write(folder.folder(), List.of(new SheetSet("kit", OLD, true)));
    }

    static IntStream steps() {
        return IntStream.rangeClosed(0, STEPS);
    }

    @ParameterizedTest
    @MethodSource("steps")
    @DisplayName(
            "after any of its moves leaves the old sheets, or after the last the new, once another order is written")
    void undone_by_any_run(int steps) throws IOException {
        killedAfter(steps);

        elsewhere();

        assertWhole(steps == STEPS ? NEW : OLD);
    }

    @ParameterizedTest
    @MethodSource("steps")
    @DisplayName("does not keep the next run of that order from being whole")
    void next_run_is_whole(int steps) throws IOException {
        killedAfter(steps);

        Outcome<Written> written =
                Exports.write(folder.folder(), List.of(new SheetSet("kit", List.of(NEW.get(0)), true)));

        assertThat(written.faults()).isEmpty();
        assertWhole(List.of(NEW.get(0)));
    }

    @ParameterizedTest
    @MethodSource("steps")
    @DisplayName("never costs what somebody filled in before the next run")
    void filled_in_between(int steps) throws IOException {
        killedAfter(steps);
        Files.writeString(Files.createDirectories(folder.folder()).resolve("a"), "filled in");

        elsewhere();

        assertThat(folder.file("a")).hasContent("filled in");
    }

    @Test
    @DisplayName("while it brought an old sheet back, which then has both its names, leaves it under its own alone")
    void undone_by_halves() throws IOException {
        killedAfter(STEPS - 1);
        Files.delete(folder.file("a"));
        Files.createLink(folder.file("a"), folder.old().file("a"));

        elsewhere();

        assertWhole(OLD);
    }

    @Test
    @DisplayName("leaves an old sheet beside one of just its content that somebody has put there meanwhile")
    void same_content_is_another_file() throws IOException {
        killedAfter(STEPS - 1);
        Files.delete(folder.file("a"));
        Files.copy(folder.old().file("a"), folder.file("a"));

        elsewhere();

        assertThat(folder.file("a")).hasContent("old");
        assertThat(folder.file("a.old")).hasContent("old");
    }

    @Test
    @DisplayName("while it wrote a new folder leaves nothing, once another order is written")
    void aside_is_swept() throws IOException {
        inAnotherPlace();
        Inside aside = new Inside(Files.createDirectory(exports.resolve("any-name-at-all")));
        try (Journal journal = Journal.of(aside)) {
            journal.beginAside();
            Files.writeString(aside.file("bill.xlsx"), "half");
        }
        Files.createDirectory(exports.resolve(Leftovers.ASIDE + "x"));

        elsewhere();

        assertThat(names(exports)).containsExactly("BL-1", "BL-2");
    }

    @Test
    @DisplayName("before it had said in a new folder what it does there leaves nothing either")
    void aside_without_a_word_is_swept() throws IOException {
        inAnotherPlace();
        Inside noJournal = new Inside(Files.createDirectory(exports.resolve(Leftovers.ASIDE + "x")));
        Files.createDirectory(noJournal.hidden());
        Inside emptyJournal = new Inside(Files.createDirectory(exports.resolve(Leftovers.ASIDE + "y")));
        Journal.of(emptyJournal).close();

        elsewhere();

        assertThat(names(exports)).containsExactly("BL-1", "BL-2");
    }

    @Test
    @DisplayName("is told from one that lives, and from folders that are only called like its own")
    void others_are_left_alone() throws IOException {
        inAnotherPlace();
        Path named = Files.createDirectories(exports.resolve(".boltlore-1").resolve("mine"));
        Path old = Files.createDirectories(exports.resolve(".BL-1.4711.1.old"));
        Inside living = new Inside(Files.createDirectory(exports.resolve("living")));
        Process other = holdingTheLockOf(living);
        try {
            elsewhere();

            assertThat(named).exists();
            assertThat(old).exists();
            assertThat(living.journal()).exists();
        } finally {
            other.destroyForcibly();
        }
    }

    /** Another process that has begun to write the folder. */
    private static Process holdingTheLockOf(Inside folder) throws IOException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        String.join(
                                File.pathSeparator, "target/test-classes", "target/classes", "target/boltlore/lib/*"),
                        Holding.class.getName(),
                        folder.folder().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertThat(process.getInputStream().read()).isEqualTo('h');
        return process;
    }

    /** Takes a folder's journal and keeps it. */
    static final class Holding {
        public static void main(String... folder) throws Exception {
            Journal journal = Journal.of(new Inside(Path.of(folder[0])));
            journal.beginAside();
            System.out.print('h');
            System.out.flush();
            Thread.sleep(60_000);
        }
    }

    private void killedAfter(int steps) throws IOException {
        Manifest before = ((Outcome.Sound<Manifest>) Manifest.of(folder)).value();
        Outcome<Plan> planned = new Plan(folder, folder.folder(), before, true, Plan.NOTHING)
                .of(List.of(new SheetSet("kit", NEW, true)));
        Plan plan = ((Outcome.Sound<Plan>) planned).value();
        for (Plan.Coming coming : plan.coming()) {
            folder.fresh().makeRoomFor(coming.name());
            Files.write(folder.fresh().file(coming.name()), coming.file().content());
        }
        Files.write(Moves.newManifest(folder), plan.manifest().content());
        Moves moves = plan.moves();
        try (Journal journal = Journal.of(folder)) {
            journal.begin(moves);
        }
        for (int step = 0; step < steps; step++) {
            step(moves, step);
        }
        inAnotherPlace();
    }

    /** The moves in their order, a copy of what is promised: out, in, manifest. */
    private void step(Moves moves, int step) throws IOException {
        int outs = moves.out().size();
        if (step < outs) {
            String name = moves.out().get(step).name();
            folder.old().makeRoomFor(name);
            Files.move(folder.file(name), folder.old().file(name));
        } else if (step < outs + moves.in().size()) {
            String name = moves.in().get(step - outs).name();
            folder.makeRoomFor(name);
            Files.move(folder.fresh().file(name), folder.file(name));
        } else {
            Inside.moveOver(Moves.newManifest(folder), folder.manifest());
        }
    }

    /** The next run is another process's: a process looks for what dead runs left once in a folder. */
    private void inAnotherPlace() throws IOException {
        exports = Files.move(exports, exports.resolveSibling("exports"));
        folder = new Inside(exports.resolve("BL-1"));
    }

    private void elsewhere() {
        assertThat(Exports.write(exports.resolve("BL-2"), List.of(new SheetSet("kit", OLD, true)))
                        .faults())
                .isEmpty();
    }

    private void assertWhole(List<SheetFile> sheets) throws IOException {
        try (Stream<Path> all = Files.walk(folder.folder())) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(file -> folder.folder().relativize(file).toString()))
                    .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                    Stream.of(".boltlore/written.json"),
                                    sheets.stream().map(SheetFile::name))
                            .toList());
        }
        assertThat(sheets)
                .allSatisfy(sheet -> assertThat(folder.file(sheet.name())).hasBinaryContent(sheet.content()));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
