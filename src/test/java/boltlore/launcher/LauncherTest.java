package boltlore.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.launcher.Image.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

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
                .allSatisfy(each -> assertThat(Image.finish(Image.start(each, Map.of(), "x")))
                        .isEqualTo(new Run(0, "x\n", "")));
    }

    @Nested
    class The_archive {

        @Test
        void is_made_by_the_first_kit_that_ends_well() throws Exception {
            assertThat(image.run("kit")).isEqualTo(new Run(0, "kit\n", ""));

            List<Path> made = image.archives();
            assertThat(made).singleElement().asString().endsWith(".jsa");
            assertThat(image.run("kit")).isEqualTo(new Run(0, "kit\n", ""));
            assertThat(image.archives()).isEqualTo(made);
        }

        /** In a plain folder: Java 17 archives no class of a jar whose path must be escaped in a URL. */
        @Test
        void is_used_by_every_command() throws Exception {
            Image plain = Image.in(folder.resolve("plain"));
            Path log = folder.resolve("classes.log");
            Map<String, String> logging = Map.of("BOLTLORE_JVM_FLAGS", "-Xlog:class+load:file=" + log);
            plain.run(logging, "kit");
            assertThat(log).content().doesNotContain("StandIn source: shared objects file (top)");
            plain.run(logging, "why");
            assertThat(log).content().contains("StandIn source: shared objects file (top)");
        }

        @Test
        void is_not_made_by_a_kit_that_fails_or_by_another_command() throws Exception {
            assertThat(image.run("kit", "exit=3").code()).isEqualTo(3);
            assertThat(image.run("why").code()).isZero();

            assertThat(image.archives()).isEmpty();
        }

        @Test
        void is_done_without_where_it_cannot_be_written() throws Exception {
            Files.writeString(image.cache(), "a file in the way");

            assertThat(image.run("kit")).isEqualTo(new Run(0, "kit\n", ""));
        }

        @Test
        void does_no_harm_when_cut_short() throws Exception {
            image.run("kit");
            Path archive = image.archives().get(0);
            byte[] whole = Files.readAllBytes(archive);
            for (int length : new int[] {0, 100, 5000, whole.length / 2}) {
                Files.delete(archive);
                Files.write(archive, Arrays.copyOf(whole, length));
                assertThat(image.run("why")).isEqualTo(new Run(0, "why\n", ""));
            }
        }

        @Test
        void does_no_harm_when_it_is_something_else_of_that_length() throws Exception {
            image.run("kit");
            Path archive = image.archives().get(0);
            byte[] noise = new byte[(int) Files.size(archive)];
            Arrays.fill(noise, (byte) 0x5a);
            Files.delete(archive);
            Files.write(archive, noise);

            assertThat(image.run("kit")).isEqualTo(new Run(0, "kit\n", ""));
        }

        @Test
        void is_made_anew_after_it_was_cut_short() throws Exception {
            image.run("kit");
            Path archive = image.archives().get(0);
            Files.delete(archive);
            Files.writeString(archive, "");
            image.run("kit");

            assertThat(image.archives())
                    .singleElement()
                    .satisfies(made -> assertThat(made).isNotEmptyFile());
        }

        @Test
        void is_made_anew_for_other_libraries() throws Exception {
            image.run("kit");
            List<Path> before = image.archives();
            Files.writeString(image.home().resolve("lib/another.jar"), "");
            image.run("kit");

            assertThat(image.archives()).hasSize(1).doesNotContainAnyElementsOf(before);
        }

        @Test
        void stands_whole_after_two_first_runs_at_once() throws Exception {
            Process one = Image.start(image.launcher(), Map.of(), "kit");
            Process other = Image.start(image.launcher(), Map.of(), "kit");

            assertThat(List.of(Image.finish(one), Image.finish(other))).containsOnly(new Run(0, "kit\n", ""));
            assertThat(image.archives()).singleElement().asString().endsWith(".jsa");
        }
    }

    @Nested
    class A_first_run {

        @Test
        void reads_what_is_typed() throws Exception {
            Process process = Image.start(image.launcher(), Map.of(), "kit", "echo");
            try (OutputStream typed = process.getOutputStream()) {
                typed.write("hello".getBytes(StandardCharsets.UTF_8));
            }

            assertThat(Image.finish(process).out()).isEqualTo("kit|echo\nhello");
        }

        @Test
        void stops_in_order_when_told_to_and_leaves_no_archive() throws Exception {
            Path log = folder.resolve("state");
            Process process = Image.start(image.launcher(), Map.of(), "kit", "wait=" + log);
            while (!Files.exists(log)) {
                Thread.sleep(20);
            }
            process.toHandle().destroy();

            assertThat(Image.finish(process).code()).isEqualTo(128 + 15);
            assertThat(log).hasContent("stopped");
            assertThat(image.archives()).isEmpty();
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

        private Path java_that_is(String script) throws IOException {
            Path java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
            Files.writeString(java, script);
            assertThat(java.toFile().setExecutable(true)).isTrue();
            return folder.resolve("jdk");
        }
    }
}
