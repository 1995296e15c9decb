package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The pictures of the rooms")
class RoomPicturesTest {

    private static final long MOST_BYTES = 60_000;

    @TempDir
    private Path folder;

    /** Where one is stale: {@code mvn -q test-compile exec:exec@rooms}, and look at it. */
    @Test
    @DisplayName("each show what the demo's page says today")
    void fresh() throws IOException {
        List<String> sums = new ArrayList<>();
        RoomPictures.at(
                folder,
                server -> RoomPictures.PAGES.forEach((name, path) -> {
                    try {
                        sums.add(RoomPictures.sum(
                                name,
                                HttpClient.newHttpClient()
                                        .send(
                                                HttpRequest.newBuilder(
                                                                server.address().resolve(path))
                                                        .build(),
                                                BodyHandlers.ofString())
                                        .body()));
                    } catch (IOException | InterruptedException e) {
                        throw new AssertionError(e);
                    }
                }));
        assertThat(sums).isEqualTo(Files.readAllLines(RoomPictures.KEPT));
    }

    @Test
    @DisplayName("are stale where a page says something else, and not for another browser")
    void stale() {
        String page = "<input type=\"hidden\" name=\"token\" value=\"a\"><p>12 lines</p>";
        assertThat(RoomPictures.sum("one", page.replace("\"a\"", "\"b\""))).isEqualTo(RoomPictures.sum("one", page));
        assertThat(RoomPictures.sum("one", page.replace("12", "13"))).isNotEqualTo(RoomPictures.sum("one", page));
    }

    @Test
    @DisplayName("stand in the README, and none is larger than 60 kB")
    void small() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        for (String name : RoomPictures.PAGES.keySet()) {
            assertThat(RoomPictures.FOLDER.resolve(name + ".png")).exists();
            assertThat(Files.size(RoomPictures.FOLDER.resolve(name + ".png"))).isLessThanOrEqualTo(MOST_BYTES);
            assertThat(readme).contains("](src/doc/" + name + ".png)");
        }
    }
}
