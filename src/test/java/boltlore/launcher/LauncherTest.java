package boltlore.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import boltlore.launcher.Image.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    @TempDir
    Path folder;

    private Image image;

    @BeforeEach
    void lay_out_an_image() throws IOException {
        image = Image.in(folder.resolve("a workshop's own"));
    }

    @Test
    void passes_arguments_and_exit_code_through() throws Exception {
        assertThat(image.run("why", "two words", "", "*", "exit=7"))
                .isEqualTo(new Run(7, "why|two words||*|exit=7\n", ""));
    }

    @Test
    void is_found_through_links() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("boltlore"), image.launcher());
        Path second = Files.createSymbolicLink(folder.resolve("b"), Path.of("boltlore"));

        assertThat(List.of(link, second))
                .allSatisfy(each -> assertThat(Image.finish(image.start(each, Map.of(), "x")))
                        .isEqualTo(new Run(0, "x\n", "")));
    }

    @Test
    void reads_what_is_typed() throws Exception {
        Process process = image.start(Map.of(), "kit", "echo");
        try (OutputStream typed = process.getOutputStream()) {
            typed.write("hello".getBytes(StandardCharsets.UTF_8));
        }

        assertThat(Image.finish(process).out()).isEqualTo("kit|echo\nhello");
    }

    @Test
    void reads_nothing_where_the_input_is_closed() throws Exception {
        String closed = "exec \"" + image.launcher() + "\" kit echo <&-";
        Process process = image.start(Path.of("/bin/sh"), Map.of(), "-c", closed);

        assertThat(Image.finish(process)).isEqualTo(new Run(0, "kit|echo\n", ""));
    }

    @Test
    void stops_in_order_when_told_to() throws Exception {
        Path log = folder.resolve("state");
        Process process = image.start(Map.of(), "kit", "wait=" + log);
        while (!Files.exists(log)) {
            Thread.sleep(20);
        }
        process.toHandle().destroy();

        assertThat(Image.finish(process).code()).isEqualTo(128 + 15);
        assertThat(log).hasContent("stopped");
    }

    @ParameterizedTest
    @ValueSource(strings = {"C", "POSIX", ""})
    void starts_in_a_folder_with_any_letter_whatever_the_locale(String locale) throws Exception {
        Image abroad = Image.in(folder.resolve("Küche"));
        Map<String, String> plain = Map.of("LC_ALL", locale, "LC_CTYPE", "", "LANG", "");

        assertThat(abroad.run(plain, "kit", "Größe")).isEqualTo(new Run(0, "kit|Größe\n", ""));
    }

    @ParameterizedTest
    @ValueSource(ints = {80, 140})
    void passes_the_width_of_the_terminal_on(int columns) throws Exception {
        Path terminal = Path.of("/usr/bin/script");
        assumeThat(terminal).exists();
        String inside = "stty cols " + columns + "; \"" + image.launcher() + "\" columns";
        Process process = image.start(terminal, Map.of("COLUMNS", ""), "-qec", inside, "/dev/null");

        assertThat(Image.finish(process).out()).contains("columns=" + columns);
    }

    @Nested
    class Its_own_archive {

        /** In a plain folder: Java 17 archives no class of a jar whose path must be escaped in a URL. */
        @Test
        void is_used_by_every_command_and_only_read() throws Exception {
            Image plain = Image.in(folder.resolve("plain"));
            Path archive = plain.madeArchive();
            byte[] made = Files.readAllBytes(archive);
            for (String command : List.of("kit", "why", "--version")) {
                assertThat(loadedBy(plain, command)).contains("StandIn source: shared objects file");
            }
            assertThat(archive).hasBinaryContent(made);
            assertThat(plain.cached()).isEmpty();
        }

        @Test
        void is_not_used_where_it_is_switched_off() throws Exception {
            Image plain = Image.in(folder.resolve("plain"));
            plain.madeArchive();
            Path log = folder.resolve("classes.log");
            plain.run(Map.of("BOLTLORE_ARCHIVE", "off", "BOLTLORE_JVM_FLAGS", "-Xlog:class+load:file=" + log), "why");

            assertThat(log).content().doesNotContain("StandIn source: shared objects file");
        }

        @Test
        void does_no_harm_when_cut_short() throws Exception {
            Path archive = image.madeArchive();
            byte[] whole = Files.readAllBytes(archive);
            for (int length : new int[] {0, 100, 5000, whole.length / 2, whole.length - 1}) {
                replace(archive, Arrays.copyOf(whole, length));
                assertThat(image.run("why")).isEqualTo(new Run(0, "why\n", ""));
            }
        }

        @Test
        void does_no_harm_when_a_byte_is_another() throws Exception {
            Path archive = image.madeArchive();
            byte[] whole = Files.readAllBytes(archive);
            int steps = 12;
            for (int step = 0; step < steps; step++) {
                byte[] damaged = whole.clone();
                int from = step < 4 ? 8 << (2 * step) : (int) ((long) whole.length * step / steps);
                Arrays.fill(damaged, from, Math.min(whole.length, from + 64), (byte) 0x5a);
                replace(archive, damaged);
                assertThat(image.run("why")).as("byte %d", from).isEqualTo(new Run(0, "why\n", ""));
            }
        }

        private static void replace(Path archive, byte[] content) throws IOException {
            Files.delete(archive);
            Files.write(archive, content);
        }
    }

    @Nested
    class Where_the_archive_does_not_fit {

        @Test
        void the_first_command_leaves_one_in_the_cache_of_the_user() throws Exception {
            Image plain = Image.in(folder.resolve("plain"));
            assertThat(plain.run("why")).isEqualTo(new Run(0, "why\n", ""));

            List<Path> made = plain.cached();
            assertThat(made).singleElement().asString().endsWith(".jsa");
            assertThat(loadedBy(plain, "parts")).contains("StandIn source: shared objects file");
            assertThat(plain.cached()).isEqualTo(made);
        }

        @Test
        void other_libraries_get_another_one() throws Exception {
            image.madeArchive();
            Files.writeString(image.home().resolve("lib/another.jar"), "");
            image.run("why");

            assertThat(image.cached()).hasSize(1);
        }

        @ParameterizedTest
        @ValueSource(strings = {"--help", "-h", "--version"})
        void help_leaves_nothing(String asked) throws Exception {
            image.run("kit", asked);
            image.run();

            assertThat(image.cached()).isEmpty();
        }

        @Test
        void it_is_done_without_where_none_can_be_written() throws Exception {
            Files.writeString(image.cache(), "a file in the way");

            assertThat(image.run("kit")).isEqualTo(new Run(0, "kit\n", ""));
        }

        @Test
        void what_a_killed_run_was_making_is_taken_away() throws Exception {
            Path own = Files.createDirectories(image.cache().resolve("boltlore"));
            Path left = Files.writeString(own.resolve("classes-1.jsa.making"), "half");
            Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
            image.run("why");

            assertThat(image.cached()).singleElement().asString().endsWith(".jsa");
        }

        @Test
        void two_first_runs_at_once_leave_one() throws Exception {
            Process one = image.start(Map.of(), "kit");
            Process other = image.start(Map.of(), "kit");

            assertThat(List.of(Image.finish(one), Image.finish(other))).containsOnly(new Run(0, "kit\n", ""));
            assertThat(image.cached()).singleElement().asString().endsWith(".jsa");
        }
    }

    private String loadedBy(Image plain, String command) throws Exception {
        Path log = folder.resolve("classes.log");
        assertThat(plain.run(Map.of("BOLTLORE_JVM_FLAGS", "-Xlog:class+load:file=" + log), command)
                        .code())
                .isZero();
        return Files.readString(log);
    }

    @Nested
    class With_a_damaged_library {

        @Test
        void says_which_one_is_missing() throws Exception {
            Files.delete(image.home().resolve("lib/boltlore.jar"));

            assertThat(image.run("kit"))
                    .isEqualTo(new Run(
                            70,
                            "",
                            "boltlore: the library boltlore.jar is missing or damaged. Install Boltlore again.\n"));
        }

        @Test
        void says_which_one_is_cut() throws Exception {
            Path jar = image.home().resolve("lib/boltlore.jar");
            Files.write(jar, Arrays.copyOf(Files.readAllBytes(jar), 500));

            assertThat(image.run("kit").code()).isEqualTo(70);
            assertThat(image.run("kit").err()).contains("boltlore.jar").doesNotContain("Exception");
        }
    }

    @Nested
    class Without_a_fitting_Java {

        @Test
        void says_that_it_is_missing() throws Exception {
            Run run = image.run(Map.of("JAVA_HOME", "", "PATH", "/nowhere"), "kit");

            assertThat(run.code()).isEqualTo(69);
            assertThat(run.err())
                    .isEqualTo("boltlore: Java is missing. Install Java 17 or newer, or set JAVA_HOME to it.\n");
        }

        @Test
        void says_that_JAVA_HOME_holds_none() throws Exception {
            Run run = image.run(Map.of("JAVA_HOME", "/nowhere"), "kit");

            assertThat(run.code()).isEqualTo(69);
            assertThat(run.err()).contains("JAVA_HOME is /nowhere").contains("Java 17 or newer");
        }

        @Test
        void says_which_one_it_found() throws Exception {
            Path home = java_that_is("#!/bin/sh\n");
            Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"11.0.2\"\n");
            Run run = image.run(Map.of("JAVA_HOME", home.toString()), "kit");

            assertThat(run.code()).isEqualTo(69);
            assertThat(run.err()).contains("Java 17 or newer is needed").contains("is version 11.0.2.");
        }

        @Test
        void asks_a_Java_that_has_no_note_beside_it() throws Exception {
            Path home = java_that_is("#!/bin/sh\necho 'java version \"1.8.0_381\"' >&2\n");
            Run run = image.run(Map.of("JAVA_HOME", home.toString()), "kit");

            assertThat(run.code()).isEqualTo(69);
            assertThat(run.err()).contains("is version 1.8.0_381.");
        }

        @Test
        void takes_the_one_that_lies_in_it() throws Exception {
            Path own = Files.createDirectories(image.home().resolve("java/bin")).resolve("java");
            Files.writeString(own, "#!/bin/sh\nexec '" + System.getProperty("java.home") + "/bin/java' \"$@\"\n");
            Files.copy(
                    Path.of(System.getProperty("java.home"), "release"),
                    image.home().resolve("java/release"));
            assertThat(own.toFile().setExecutable(true)).isTrue();

            assertThat(image.run(Map.of("JAVA_HOME", "/nowhere"), "kit")).isEqualTo(new Run(0, "kit\n", ""));
        }

        private Path java_that_is(String script) throws IOException {
            Path java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
            Files.writeString(java, script);
            assertThat(java.toFile().setExecutable(true)).isTrue();
            return folder.resolve("jdk");
        }
    }
}
