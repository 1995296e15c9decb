package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.report.SheetFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program as the build has made it, killed as nothing can be kept from: by SIGKILL, at random moments. As most of a run
 * is spent on working sheets out, a process that does nothing but write the same sheets is killed more often.
 */
@DisplayName("The program, killed")
class KilledProgramTest {

    private static final String PROGRAM =
            Path.of("target", "boltlore", "bin", "boltlore").toAbsolutePath().toString();
    private static final String ORDER = "catalog/orders/bl-2001.json";
    private static final int ROUNDS = 6;
    private static final int ROUNDS_OF_WRITING = 40;

    /** Of these at least so many have to leave something half done, or nothing was tried. */
    private static final int LEAST_HITS = 15;

    private static final int LEAST_FILES = 10;
    private static final int LONGEST_AGAIN_MS = 150;

    private static final int LONGEST_WRITING_MS = 40;

    @TempDir
    static Path clean;

    @TempDir
    Path temp;

    private static final List<Map<String, Print>> SETS = new ArrayList<>();
    private static final List<String> CATALOGUES = new ArrayList<>();
    private static long usualMs;

    /** Two catalogues, and the sheets that each gives. */
    @BeforeAll
    static void clean_runs() throws Exception {
        CATALOGUES.add("catalog");
        CATALOGUES.add(dearer().toString());
        for (String catalogue : CATALOGUES) {
            long start = System.nanoTime();
            run(
                    "kit",
                    ORDER,
                    "--catalogue",
                    catalogue,
                    "--out",
                    cleanly(SETS.size()).toString());
            usualMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            SETS.add(prints(cleanly(SETS.size()).resolve("BL-2001")));
        }
        assertThat(SETS.get(0)).hasSizeGreaterThan(LEAST_FILES).isNotEqualTo(SETS.get(1));
    }

    private static Path cleanly(int set) {
        return clean.resolve("clean-" + set);
    }

    private interface Killing {
        void kill(int round, Path exports, Random random) throws Exception;
    }

    @Test
    @DisplayName("at any moment, leaves the old or the new sheets once anything else is written beside them")
    void never_mixed() throws Exception {
        Path exports = never_mixed(ROUNDS, 0, this::killed);
        run("kit", ORDER, "--out", exports.toString());
        assertThat(prints(exports.resolve("BL-2001"))).isEqualTo(SETS.get(0));
    }

    @Test
    @DisplayName("while it writes, leaves the old or the new sheets as well")
    void never_mixed_by_writing() throws Exception {
        never_mixed(ROUNDS_OF_WRITING, LEAST_HITS, (round, exports, random) -> {
            Process process = again(exports);
            assertThat(process.getInputStream().read()).isEqualTo(Again.READY);
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_AGAIN_MS * 1000));
            process.destroyForcibly().waitFor();
        });
    }

    private Path never_mixed(int rounds, int leastHits, Killing killing) throws Exception {
        long seed = System.nanoTime();
        System.out.println("KilledProgramTest: seed " + seed);
        Random random = new Random(seed);
        Path exports = temp.resolve("exports-0");
        boolean written = false;
        int hits = 0;
        for (int round = 1; round <= rounds; round++) {
            killing.kill(round, exports, random);
            hits += isWriting(exports) ? 1 : 0;
            // A process looks for what dead runs left once in a folder; for this one it is another folder each time.
            exports = Files.move(Files.createDirectories(exports), temp.resolve("exports-" + round));
            Exports.write(exports.resolve("BL-1"), List.of());
            written = isWhole(exports, written, "seed " + seed + ", round " + round);
        }
        System.out.println("KilledProgramTest: " + hits + " kills hit the writing");
        assertThat(hits).as("kills that hit the writing").isGreaterThanOrEqualTo(leastHits);
        return exports;
    }

    /** Tells whether there are sheets by now. */
    private static boolean isWhole(Path exports, boolean written, String as) throws IOException {
        assertThat(names(exports)).as(as).isSubsetOf("BL-2001");
        if (!Files.exists(exports.resolve("BL-2001"))) {
            assertThat(written).as(as + ": the folder is gone").isFalse();
            return false;
        }
        assertThat(prints(exports.resolve("BL-2001"))).as(as).isIn(SETS);
        assertThat(names(exports.resolve("BL-2001/.boltlore"))).containsExactly("written.json");
        return true;
    }

    @Test
    @DisplayName("or not, ends well beside another run into the same folder: all sheets are one run's")
    void two_at_once() throws Exception {
        Path exports = temp.resolve("exports");
        List<Process> both = new ArrayList<>();
        for (String catalogue : CATALOGUES) {
            both.add(start(exports, catalogue));
        }
        for (Process process : both) {
            assertThat(process.waitFor()).isZero();
        }
        assertThat(prints(exports.resolve("BL-2001"))).isIn(SETS);
        assertThat(names(exports)).containsExactly("BL-2001");
    }

    /** Writes the sheets of one run and of the other in turn until it is killed. */
    static final class Again {

        private static final char READY = 'r';

        private Again() {}

        public static void main(String... words) throws IOException {
            List<List<SheetFile>> sets = new ArrayList<>();
            for (int set = 1; set < words.length; set++) {
                sets.add(files(Path.of(words[set])));
            }
            System.out.print(READY);
            System.out.flush();
            for (int i = 0; ; i++) {
                Exports.write(Path.of(words[0]), List.of(new SheetSet("kit", sets.get(i % sets.size()), true)));
            }
        }

        private static List<SheetFile> files(Path folder) throws IOException {
            List<SheetFile> files = new ArrayList<>();
            for (String name : prints(folder).keySet()) {
                files.add(new SheetFile(name, Files.readAllBytes(folder.resolve(name))));
            }
            return files;
        }
    }

    private static Process again(Path exports) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Again.class.getName(),
                        exports.resolve("BL-2001").toString(),
                        cleanly(0).resolve("BL-2001").toString(),
                        cleanly(1).resolve("BL-2001").toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** Every other time while it writes, else at any moment. */
    private void killed(int round, Path exports, Random random) throws Exception {
        Process process = start(exports, CATALOGUES.get(round % 2));
        if (round % 2 == 0) {
            while (process.isAlive() && !isWriting(exports)) {
                TimeUnit.MICROSECONDS.sleep(200);
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_WRITING_MS * 1000));
        } else {
            TimeUnit.MILLISECONDS.sleep(random.nextLong(usualMs / 2, usualMs + 1));
        }
        process.destroyForcibly().waitFor();
    }

    private static boolean isWriting(Path exports) {
        if (Inside.there(new Inside(exports.resolve("BL-2001")).journal())) {
            return true;
        }
        try (Stream<Path> all = Files.list(exports)) {
            return all.anyMatch(each -> each.getFileName().toString().startsWith("."));
        } catch (IOException notYet) {
            return false;
        }
    }

    private static Process start(Path exports, String catalogue) throws IOException {
        return new ProcessBuilder(PROGRAM, "kit", ORDER, "--catalogue", catalogue, "--out", exports.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static void run(String... words) throws Exception {
        List<String> command = new ArrayList<>(List.of(PROGRAM));
        command.addAll(List.of(words));
        Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor()).as(said).isZero();
    }

    private static Path dearer() throws IOException {
        Path copy = clean.resolve("catalog");
        try (Stream<Path> all = Files.walk(Path.of("catalog"))) {
            for (Path each : all.toList()) {
                Files.copy(each, copy.resolve(Path.of("catalog").relativize(each)));
            }
        }
        Path parts = copy.resolve("parts/stook-drive.json");
        String text = Files.readString(parts);
        Files.writeString(parts, text.replaceFirst("\"cost\": \"(\\d)", "\"cost\": \"9$1"));
        return copy;
    }

    private static Map<String, Print> prints(Path folder) throws IOException {
        Map<String, Print> prints = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                if (!name.startsWith(Inside.HIDDEN)) {
                    prints.put(name, Print.of(file));
                }
            }
        }
        return prints;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
