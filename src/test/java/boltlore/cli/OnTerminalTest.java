package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("How far a run has come is told on a terminal")
class OnTerminalTest {

    @TempDir
    private Path folder;

    private Path stream(String device) throws IOException {
        return Files.createSymbolicLink(folder.resolve(device.replace('/', '-')), Path.of(device));
    }

    @Test
    void which_Linux_names_as_a_device() throws IOException {
        assertThat(OnTerminal.isTerminal(stream("/dev/pts/3"))).isTrue();
        assertThat(OnTerminal.isTerminal(stream("/dev/tty1"))).isTrue();
    }

    @Test
    void and_neither_in_a_log_nor_in_a_pipe() throws IOException {
        assertThat(OnTerminal.isTerminal(stream("/var/log/prove.log"))).isFalse();
        assertThat(OnTerminal.isTerminal(stream("pipe:[4711]"))).isFalse();
        assertThat(OnTerminal.isTerminal(stream("/dev/null"))).isFalse();
    }
}
