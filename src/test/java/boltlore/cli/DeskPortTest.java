package boltlore.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A desk at a port")
class DeskPortTest {

    @Test
    @DisplayName("that something else answers at says so, and how to take another")
    void taken(@TempDir Path folder) throws IOException {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String refused = DeskAt.file(folder).refused("desk", "--port", other.getLocalPort());
            assertThat(refused)
                    .contains("port " + other.getLocalPort())
                    .contains("--port 0")
                    .doesNotContain("Exception", "internal");
        }
    }
}
