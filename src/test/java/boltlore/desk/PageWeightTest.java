package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Follows the links of the demo from room to room: of pages that differ only in what they are of, a few are looked at. */
@DisplayName("The pages of the demo")
class PageWeightTest {

    private static final int MOST_BYTES = 150_000;
    private static final int OF_A_KIND = 3;
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final Pattern FILE = Pattern.compile("^/assets/|file=|\\.(xlsx|csv|json)$");
    private static final Pattern NAMES = Pattern.compile("[A-Z]{1,3}-\\d+|=[^&]*|\\d+");

    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<String, Integer> kinds = new HashMap<>();
    private final Deque<String> open =
            new ArrayDeque<>(List.of("/sales", "/stores", "/fabrication", "/bench", "/engineering", "/office"));
    private final Set<String> known = new HashSet<>(open);

    @TempDir
    private Path folder;

    @Test
    @DisplayName(
            "are all there with no link that leads to nothing, and none weighs more than 150 kB but a sheet that is asked for whole, to print it")
    void weight() {
        SoftAssertions all = new SoftAssertions();
        int pages = 0;
        try (OpenDesk desk = OpenDesk.at(folder).withDemo()) {
            while (!open.isEmpty()) {
                String path = open.poll();
                if (kinds.merge(NAMES.matcher(path).replaceAll("#"), 1, Integer::sum) <= OF_A_KIND) {
                    HttpResponse<byte[]> page = get(desk.page(path.replace(" ", "%20")));
                    String html = new String(page.body(), java.nio.charset.StandardCharsets.UTF_8);
                    all.assertThat(page.statusCode()).as(path).isEqualTo(200);
                    if (!path.endsWith("leaf=all")) {
                        all.assertThat(page.body().length).as(path).isLessThanOrEqualTo(MOST_BYTES);
                    }
                    pages++;
                    links(html);
                }
            }
            assertThat(desk.log()).isEmpty();
        }
        all.assertAll();
        assertThat(pages).isGreaterThan(80);
    }

    private void links(String html) {
        Matcher link = LINK.matcher(html);
        while (link.find()) {
            String path = link.group(1).replace("&amp;", "&");
            if (!FILE.matcher(path).find() && known.add(path)) {
                open.add(path);
            }
        }
    }

    private HttpResponse<byte[]> get(URI page) {
        try {
            return client.send(HttpRequest.newBuilder(page).build(), BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
