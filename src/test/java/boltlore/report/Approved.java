package boltlore.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares text with a file that a person has read and approved. Where they differ, or there is no such file yet, what
 * came out is left beside it with the ending <code>.received.txt</code>, to be read and, if right, renamed.
 */
public final class Approved {

    private static final Path RESOURCES = Path.of("src/test/resources/boltlore");

    private Approved() {}

    /** The name is a path below <code>src/test/resources/boltlore</code>, without its ending <code>.approved.txt</code>. */
    public static void check(String name, String text) {
        Path approved = RESOURCES.resolve(name + ".approved.txt");
        Path received = RESOURCES.resolve(name + ".received.txt");
        try {
            Files.deleteIfExists(received);
            String expected = Files.exists(approved) ? Files.readString(approved) : "";
            if (!text.equals(expected)) {
                Files.createDirectories(received.getParent());
                Files.writeString(received, text);
            }
            assertThat(text).as("see " + received).isEqualTo(expected);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
