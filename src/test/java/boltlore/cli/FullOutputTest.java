package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

@DisplayName("An answer that cannot be printed")
class FullOutputTest {

    @TempDir
    Path out;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--version",
                "--help",
                "check --json",
                "parts",
                "parts --json",
                "why catalog/orders/bl-1001.json PV-BL-S --json",
                "compare catalog/orders/bl-1001.json catalog/orders/bl-1002.json",
                "kit catalog/orders/bl-1001.json --json --out OUT",
                "coat catalog/orders/bl-1001.json --out OUT",
                "axle-loads catalog/orders/bl-1001.json --json --out OUT"
            })
    @DisplayName("to a full device ends with exit code 4 and a sentence")
    void full_device(String command) throws IOException {
        StringWriter err = new StringWriter();
        try (OutputStream full = new FileOutputStream("/dev/full")) {
            int exit = Boltlore.run(
                    new PrintWriter(full, false, StandardCharsets.UTF_8),
                    new PrintWriter(err),
                    List.of(command.split(" ")).stream()
                            .map(word -> word.equals("OUT") ? out.toString() : word)
                            .toArray(String[]::new));

            assertThat(exit).as(command).isEqualTo(4);
        } catch (IOException closingWritesAgain) {
            assertThat(closingWritesAgain).hasMessageContaining("No space");
        }
        assertThat(err.toString()).contains("The answer could not be printed: the output is closed or full.");
    }

    @Test
    @DisplayName("is told, too, where the order stops, which its exit code says")
    void stopped() throws IOException {
        StringWriter err = new StringWriter();
        try (OutputStream full = new FileOutputStream("/dev/full")) {
            int exit = Boltlore.run(
                    new PrintWriter(full, false, StandardCharsets.UTF_8),
                    new PrintWriter(err),
                    "ship",
                    "catalog/orders/bl-1002.json",
                    "--out",
                    out.toString());

            assertThat(exit).isEqualTo(Exit.STOPPED);
        } catch (IOException closingWritesAgain) {
            assertThat(closingWritesAgain).hasMessageContaining("No space");
        }
        assertThat(err.toString()).contains("The answer could not be printed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"parts", "parts --json"})
    @DisplayName("because its reader has ended, as 'head' does, ends without a word as programs do that SIGPIPE ends")
    void closed_pipe(String command) throws Exception {
        String program = Path.of(System.getProperty("java.home"), "bin", "java") + " -XX:TieredStopAtLevel=1 -cp '"
                + System.getProperty("java.class.path") + "' boltlore.cli.Boltlore " + command;
        Process shell =
                new ProcessBuilder("sh", "-c", "{ " + program + "; echo exit $? >&2; } | head -1 >/dev/null").start();

        assertThat(new String(shell.getErrorStream().readAllBytes(), StandardCharsets.UTF_8))
                .isEqualTo("exit " + Exit.READER_GONE + "\n");
    }

    @Test
    @DisplayName("of any command is told, as each prints through the same writer")
    void every_command_prints_through_the_writer() {
        CommandLine line = CommandLineParser.whole();

        assertThat(line.getSubcommands().values())
                .flatExtracting(command -> command.getSubcommands().isEmpty()
                        ? List.of(command)
                        : List.copyOf(command.getSubcommands().values()))
                .allSatisfy(command -> assertThat(RoomCommand.class)
                        .isAssignableFrom(command.getCommandSpec().userObject().getClass()));
    }
}
