package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file system in memory that is really full; where nobody may mount one, the limit on a file's size stands for it. */
@DisplayName("A book on a disk that is full")
class BookOnFullDiskTest {

    private static final String ORDER = "catalog/orders/bl-1001.json";
    private static final int FILLING_KIB = 16;

    @TempDir
    private Path folder;

    private Path disk;
    private boolean mounted;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectories(folder.resolve("disk"));
        mounted = Files.isExecutable(Path.of("/usr/bin/mount"))
                && ran("mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", disk.toString());
        assumeThat(mounted).as("may mount a file system").isTrue();
    }

    @AfterEach
    void unmount() throws Exception {
        if (mounted) {
            assertThat(ran("umount", disk.toString())).isTrue();
        }
    }

    private static boolean ran(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getInputStream().readAllBytes();
        return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    }

    /** Fills what room is left. */
    private Path filled() throws IOException {
        Path file = disk.resolve("filling");
        try (var out = Files.newOutputStream(file)) {
            while (true) {
                out.write(new byte[FILLING_KIB << 10]);
            }
        } catch (IOException full) {
            return file;
        }
    }

    @Test
    @DisplayName("loses the command and nothing else, is still read, and goes on when there is room")
    void full() throws Exception {
        DeskAt desk = DeskAt.file(disk);
        desk.done("order", "draft", ORDER);
        String before = desk.exported(folder);
        Path filling = filled();

        Ran refused = desk.run("order", "draft", "catalog/orders");

        assertThat(refused.exit()).as(refused.toString()).isEqualTo(Exit.NO_BOOK);
        assertThat(refused.err().replaceAll("\\s+", " "))
                .contains("nothing was written")
                .doesNotContain("Exception");
        Files.delete(filling);
        assertThat(desk.exported(folder)).isEqualTo(before);
        assertThat(desk.done("book", "check")).contains("The journal is whole");
        desk.done("order", "draft", "catalog/orders");
    }

    @Test
    @DisplayName("is not begun there: a sentence says so")
    void begun() throws Exception {
        filled();

        Ran refused = DeskAt.file(disk).run("order", "draft", ORDER);

        assertThat(refused.exit()).as(refused.toString()).isEqualTo(Exit.NO_BOOK);
        assertThat(refused.err()).doesNotContain("Exception");
    }
}
