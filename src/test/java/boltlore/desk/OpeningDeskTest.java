package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.desk.frame.Access;
import boltlore.desk.frame.Answer;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Server;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A desk that opens")
class OpeningDeskTest {

    private final HttpClient client =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();

    private static final Room ROOM = new Room() {
        @Override
        public Role role() {
            return Role.ANY;
        }

        @Override
        public String path() {
            return "/a";
        }

        @Override
        public String says() {
            return "A";
        }

        @Override
        public void open(Doors doors) {
            doors.look("/a", call -> Answer.page("Open", "frame/failed.jte", "It is open."));
        }
    };

    private HttpResponse<String> get(Server server, String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(server.address().resolve(path)).build(), BodyHandlers.ofString());
    }

    @Test
    @DisplayName(
            "answers at once with a page that waits and says for what, and with its rooms as soon as there are some")
    void waits() throws IOException, InterruptedException {
        StringWriter log = new StringWriter();
        try (Server server = new Server(Access.here(0), OpenDesk::by, new PrintWriter(log, true))) {
            server.waitsFor("It counts to ten.");
            HttpResponse<String> waiting = get(server, "/a");
            assertThat(waiting.statusCode()).isEqualTo(503);
            assertThat(waiting.headers().firstValue("Retry-After")).hasValue("1");
            assertThat(waiting.headers().firstValue("Content-Security-Policy")).isPresent();
            assertThat(waiting.body()).contains("The desk opens", "It counts to ten.", "http-equiv=\"refresh\"");

            server.open(List.of(ROOM));
            assertThat(get(server, "/").body()).contains("It is open.");
            assertThat(get(server, "/b").statusCode()).isEqualTo(404);
        }
        assertThat(log.toString()).isEmpty();
    }
}
