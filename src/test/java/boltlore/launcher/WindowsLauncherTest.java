package boltlore.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boltlore.launcher.BatchFile.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The launcher for Windows, followed line by line; no Windows is at hand to start it on. */
class WindowsLauncherTest {

    private static final Path LAUNCHER = Path.of("src/main/launcher/boltlore.bat");
    private static final String BIN = "C:\\Boltlore 1\\bin\\";
    private static final String JAR = BIN + "..\\lib\\boltlore.jar";
    private static final String OWN = BIN + "..\\java\\bin\\java.exe";

    @TempDir
    private Path folder;

    @Test
    void starts_the_program_and_passes_arguments_and_exit_code_on() throws IOException {
        Run run = run(Set.of(JAR), Map.of(), "kit", "\"two words\"", "--all");

        assertThat(run.code()).isZero();
        assertThat(run.started()).hasSize(2);
        assertThat(run.started().get(1))
                .startsWith("\"java\" ")
                .endsWith("-jar \"" + JAR + "\" kit \"two words\" --all");
        assertThat(new BatchFile(LAUNCHER, BIN, Set.of(JAR)::contains, line -> !line.contains("-jar"))
                        .run(Map.of(), "kit")
                        .code())
                .isEqualTo(1);
    }

    @Test
    void takes_the_Java_that_lies_in_it_before_any_other() throws IOException {
        Map<String, String> home = Map.of("JAVA_HOME", "D:\\jdk");

        assertThat(run(Set.of(JAR, OWN), home, "kit").started()).allMatch(line -> line.startsWith("\"" + OWN + "\""));
        assertThat(run(Set.of(JAR), home, "kit").started())
                .allMatch(line -> line.startsWith("\"D:\\jdk\\bin\\java.exe\""));
    }

    @Test
    void says_that_Java_is_missing() throws IOException {
        Run run = new BatchFile(LAUNCHER, BIN, Set.of(JAR)::contains, line -> false).run(Map.of(), "kit");

        assertThat(run.code()).isEqualTo(69);
        assertThat(run.said()).contains("Java is missing. Install Java 17 or newer");
        assertThat(run.started()).hasSize(1);
    }

    @Test
    void says_that_its_library_is_missing() throws IOException {
        Run run = run(Set.of(), Map.of(), "kit");

        assertThat(run.code()).isEqualTo(70);
        assertThat(run.said()).contains("boltlore.jar is missing or damaged");
    }

    @ParameterizedTest
    @ValueSource(strings = {"choose", "ask", "orders", "prove"})
    void gives_room_to_who_asks_of_all_orders_at_once(String command) throws IOException {
        assertThat(run(Set.of(JAR), Map.of(), command, "x").started().get(1)).contains(" -Xmx512m ");
        assertThat(run(Set.of(JAR), Map.of(), "kit", command).started().get(1)).contains(" -Xmx288m ");
    }

    @Test
    void passes_further_flags_on() throws IOException {
        assertThat(run(Set.of(JAR), Map.of("BOLTLORE_JVM_FLAGS", "-Xmx1g"), "kit")
                        .started()
                        .get(1))
                .contains(" -Xmx1g -jar ");
    }

    @Test
    void a_line_in_a_form_that_nobody_follows_is_refused() throws IOException {
        Path other = Files.writeString(folder.resolve("other.bat"), "@echo off\ngoto end\n");

        assertThatThrownBy(() -> new BatchFile(other, BIN, name -> true, line -> true).run(Map.of()))
                .hasMessageContaining("goto end");
    }

    private static Run run(Set<String> files, Map<String, String> environment, String... arguments) throws IOException {
        return new BatchFile(LAUNCHER, BIN, files::contains, line -> true).run(environment, arguments);
    }
}
