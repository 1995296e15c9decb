package boltlore.distribution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules that are compiled once more, with the build's own settings, are the same bytes. */
class RulesIT {

    private static final Path CLASSES = Path.of("target/classes");

    @Test
    void compiled_twice_they_are_the_same() throws Exception {
        Map<String, String> before = sums();
        assertThat(before.keySet()).anyMatch(name -> name.matches(".*/DomainClassesMetadata[0-9A-F]+\\.class"));

        Process process = new ProcessBuilder(
                        "mvn", "-q", "-o", "-B", "resources:copy-resources@lay-out-rules", "kie:build@compile-rules")
                .redirectErrorStream(true)
                .start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor()).as(told).isZero();
        assertThat(sums()).isEqualTo(before);
    }

    private static Map<String, String> sums() throws IOException, NoSuchAlgorithmException {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                sums.put(CLASSES.relativize(file).toString(), HexFormat.of().formatHex(sum));
            }
        }
        return sums;
    }
}
