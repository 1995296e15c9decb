package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as the build has made it, killed as nothing can be kept from: by SIGKILL, at random moments. */
@DisplayName("The program, killed")
class KilledProgramTest {

    private static final String PROGRAM =
            Path.of("target", "boltlore", "bin", "boltlore").toAbsolutePath().toString();
    private static final String ORDER = "catalog/orders/bl-2001.json";
    private static final int ROUNDS = 20;

    /** Of the kills while it writes at least so many have to leave something half done, or nothing was tried. */
    private static final int LEAST_HITS = 3;

    private static final int LONGEST_WRITING_MS = 40;

    @TempDir
    Path temp;

    private final List<Map<String, Print>> sets = new ArrayList<>();
    private final List<String> catalogues = new ArrayList<>();
    private long usualMs;

    /** Two catalogues, and the sheets that each gives. */
    @BeforeEach
    void clean_runs() throws Exception {
        catalogues.add("catalog");
        catalogues.add(dearer().toString());
        for (String catalogue : catalogues) {
            Path clean = temp.resolve("clean-" + sets.size());
            long start = System.nanoTime();
            run("kit", "--all", ORDER, "--catalogue", catalogue, "--out", clean.toString());
            usualMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            sets.add(prints(clean.resolve("BL-2001")));
        }
        assertThat(sets.get(0)).hasSizeGreaterThan(50).isNotEqualTo(sets.get(1));
    }

    @Test
    @DisplayName("at any moment, leaves the old or the new sheets once anything else is written beside them")
    void never_mixed() throws Exception {
        long seed = System.nanoTime();
        System.out.println("KilledProgramTest: seed " + seed);
        Random random = new Random(seed);
        Path exports = temp.resolve("exports-0");
        boolean written = false;
        int hits = 0;
        for (int round = 1; round <= ROUNDS; round++) {
            killed(round, exports, random);
            hits += isWriting(exports) ? 1 : 0;
            // A process looks for what dead runs left once in a folder; for this one it is another folder each time.
            exports = Files.move(Files.createDirectories(exports), temp.resolve("exports-" + round));
            Exports.write(exports.resolve("BL-1"), List.of());

            assertThat(names(exports)).as("seed %d, round %d", seed, round).isSubsetOf("BL-2001");
            if (Files.exists(exports.resolve("BL-2001"))) {
                assertThat(prints(exports.resolve("BL-2001")))
                        .as("seed %d, round %d", seed, round)
                        .isIn(sets);
                assertThat(names(exports.resolve("BL-2001/.boltlore"))).containsExactly("written.json");
                written = true;
            } else {
                assertThat(written)
                        .as("seed %d, round %d: the folder is gone", seed, round)
                        .isFalse();
            }
        }
        System.out.println("KilledProgramTest: " + hits + " kills hit the writing");
        assertThat(hits).as("kills that hit the writing").isGreaterThanOrEqualTo(LEAST_HITS);
        run("kit", "--all", ORDER, "--out", exports.toString());
        assertThat(prints(exports.resolve("BL-2001"))).isEqualTo(sets.get(0));
    }

    @Test
    @DisplayName("or not, ends well beside another run into the same folder: all sheets are one run's")
    void two_at_once() throws Exception {
        Path exports = temp.resolve("exports");
        for (int round = 0; round < 2; round++) {
            List<Process> both = new ArrayList<>();
            for (String catalogue : catalogues) {
                both.add(start(exports, catalogue));
            }
            for (Process process : both) {
                assertThat(process.waitFor()).isZero();
            }
            assertThat(prints(exports.resolve("BL-2001"))).isIn(sets);
            assertThat(names(exports)).containsExactly("BL-2001");
        }
    }

    /** Every other time while it writes, else at any moment. */
    private void killed(int round, Path exports, Random random) throws Exception {
        Process process = start(exports, catalogues.get(round % 2));
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
        return new ProcessBuilder(PROGRAM, "kit", "--all", ORDER, "--catalogue", catalogue, "--out", exports.toString())
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

    private Path dearer() throws IOException {
        Path copy = temp.resolve("catalog");
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
