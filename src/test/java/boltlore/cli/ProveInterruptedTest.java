package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The interrupt key during a long proof, sent to a process of its own. */
@Tag("slow")
@DisplayName("prove, interrupted")
class ProveInterruptedTest {

    @TempDir
    Path folder;

    @Test
    @Timeout(120)
    @DisplayName("prints what was proved so far and names the rest")
    void prints_what_was_proved_so_far() throws IOException, InterruptedException {
        Path out = folder.resolve("out");
        // A shell that runs the tests in the background lets them ignore the key, and Java then keeps to that.
        Process process = new ProcessBuilder(
                        "env",
                        "--default-signal=INT",
                        "BOLTLORE_PROGRESS=yes",
                        ProcessHandle.current().info().command().orElse("java"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "boltlore.cli.Boltlore",
                        "prove",
                        "film-hole",
                        "series-8",
                        "series-7",
                        "queens-8",
                        "two-of-three",
                        "--catalogue",
                        "src/test/resources/worked-families")
                .redirectOutput(out.toFile())
                .start();
        // Whatever of the eight numbers is being proved when they are first named, the next two families take seconds.
        String heard = heardUntil("series-8", process.getErrorStream());

        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();

        assertThat(process.waitFor(60, TimeUnit.SECONDS)).as(heard).isTrue();
        assertThat(process.exitValue()).isEqualTo(130);
        assertThat(Files.readString(out))
                .contains("film-hole: ")
                .contains("required part missing: print-film")
                .contains("two-of-three: ")
                .contains("Unproved, because the time was up:");
    }

    private static String heardUntil(String word, InputStream from) throws IOException {
        StringBuilder heard = new StringBuilder();
        byte[] buffer = new byte[256];
        int length = from.read(buffer);
        while (length > 0
                && heard.append(new String(buffer, 0, length, StandardCharsets.UTF_8))
                                .indexOf(word)
                        < 0) {
            length = from.read(buffer);
        }
        return heard.toString();
    }
}
