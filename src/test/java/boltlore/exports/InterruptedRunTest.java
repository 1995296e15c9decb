package boltlore.exports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as the build has made it, started as a person starts it. */
@DisplayName("A run of the program")
class InterruptedRunTest {

    private static final String PROGRAM =
            Path.of("target", "boltlore", "bin", "boltlore").toAbsolutePath().toString();

    @TempDir
    Path exports;

    @Test
    @DisplayName("that is interrupted leaves whole orders or none, and the next run is complete")
    void interrupted() throws Exception {
        Process run = new ProcessBuilder(PROGRAM, "kit", "catalog/orders", "--out", exports.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        while (run.isAlive() && namesIn(exports).isEmpty()) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
        new ProcessBuilder("kill", "-INT", Long.toString(run.pid())).start().waitFor();
        run.waitFor();

        for (String order : namesIn(exports)) {
            if (!order.startsWith(".")) {
                assertThat(exports.resolve(order)).isDirectoryContaining("glob:**/bill.xlsx");
                assertThat(exports.resolve(order)).isDirectoryContaining("glob:**/json");
            }
        }
        Process next = new ProcessBuilder(PROGRAM, "kit", "catalog/orders/bl-1001.json", "--out", exports.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(next.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(next.waitFor()).as(said).isZero();
        assertThat(namesIn(exports)).contains("BL-1001").noneMatch(name -> name.startsWith(".BL-1001"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kit catalog/orders/bl-1001.json --out OUT",
                "kit catalog/orders/bl-1001.json --out OUT/not/there/yet",
                "prove stook-pickup --within 5s --evidence OUT/evidence",
                "cut catalog/orders/bl-1001.json --out OUT"
            })
    @DisplayName("on a full disk says so, exits with 4 and leaves nothing")
    void full_disk(String command) throws Exception {
        String script = "mount -t tmpfs -o size=64k none '" + exports + "' && '" + PROGRAM + "' "
                + command.replace("OUT", "'" + exports + "'") + "; echo exit $?; ls -A '" + exports + "'";
        Process run = new ProcessBuilder("unshare", "--mount", "--map-root-user", "sh", "-c", script)
                .redirectErrorStream(true)
                .start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(said).contains("No space left on device").endsWith("exit 4\n");
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
