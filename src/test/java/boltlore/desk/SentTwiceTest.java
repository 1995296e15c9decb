package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A form that is sent twice")
class SentTwiceTest {

    private static final Pattern FIELD = Pattern.compile("name=\"(token|once)\" value=\"([^\"]+)\"");
    private static final String FORM = "application/x-www-form-urlencoded";

    @TempDir
    private static Path folder;

    private static OpenDesk desk = null;

    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeAll
    static void open() {
        desk = OpenDesk.at(folder);
        desk.rooms().stock("FX-W6", 100);
    }

    @AfterAll
    static void close() {
        desk.close();
        assertThat(desk.log()).isEmpty();
    }

    /** A form that takes washers in, as its page gives it out. */
    private record Form(String cookie, Map<String, String> fields) {

        Form with(String name, String value) {
            Map<String, String> other = new LinkedHashMap<>(fields);
            other.put(name, value);
            return new Form(cookie, other);
        }

        String body() {
            return fields.entrySet().stream()
                    .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                    .collect(Collectors.joining("&"));
        }
    }

    private Form form(String quantity) throws IOException, InterruptedException {
        Form form = formOf("/stores/receive");
        form.fields().put("part", "FX-W6");
        form.fields().put("quantity", quantity);
        // Other tests have taken the same part in today.
        form.fields().put("further", "yes");
        return form;
    }

    private Form formOf(String path) throws IOException, InterruptedException {
        HttpResponse<String> page =
                client.send(HttpRequest.newBuilder(desk.page(path)).build(), HttpResponse.BodyHandlers.ofString());
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher found = FIELD.matcher(page.body());
        while (found.find()) {
            fields.put(found.group(1), found.group(2));
        }
        return new Form(cookie, fields);
    }

    private HttpResponse<String> send(OpenDesk to, Form form) throws IOException, InterruptedException {
        return send(to, "/stores/receive", form);
    }

    private HttpResponse<String> send(OpenDesk to, String path, Form form) throws IOException, InterruptedException {
        URI page = to.page(path);
        return client.send(
                HttpRequest.newBuilder(page)
                        .header("Cookie", form.cookie())
                        .header("Origin", page.resolve("/").toString().replaceAll("/$", ""))
                        .header("Content-Type", FORM)
                        .POST(HttpRequest.BodyPublishers.ofString(form.body()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static String lies() {
        return desk.rooms().lying("FX-W6").toPlainString();
    }

    @Test
    @DisplayName("is done once, and answered the same both times")
    void done_once() throws IOException, InterruptedException {
        Form form = form("7");
        String before = lies();

        HttpResponse<String> first = send(desk, form);
        HttpResponse<String> again = send(desk, form);

        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(again.statusCode()).isEqualTo(303);
        assertThat(again.headers().firstValue("Location"))
                .isEqualTo(first.headers().firstValue("Location"));
        assertThat(Integer.parseInt(lies())).isEqualTo(Integer.parseInt(before) + 7);
    }

    @Test
    @DisplayName("lands where it did the first time where it begins an order, or quotes it, too")
    void sales() throws IOException, InterruptedException {
        Form begun = formOf("/sales/new");
        begun.fields()
                .putAll(Map.of("customer", "Ann Gable", "family", "pannier-van", "built", "1968", "number", "BL-7001"));
        String order = "/sales/order/BL-7001";
        for (int time = 0; time < 2; time++) {
            HttpResponse<String> answer = send(desk, "/sales/new", begun);
            assertThat(answer.statusCode()).isEqualTo(303);
            assertThat(answer.headers().firstValue("Location")).hasValue(order);
        }
        Form copied = formOf(order);
        String first = "";
        for (int time = 0; time < 2; time++) {
            HttpResponse<String> answer = send(desk, order + "/copy", copied);
            String landed = answer.headers().firstValue("Location").orElseThrow();
            assertThat(landed).isEqualTo(first.isEmpty() ? "/sales/order/BL-7002" : first);
            first = landed;
        }
    }

    @Test
    @DisplayName("is answered the same both times where the goods were not asked about before, too")
    void done_once_unasked() throws IOException, InterruptedException {
        Form form = form("3");
        form.fields().remove("further");
        form.fields().put("part", "FX-N10");

        HttpResponse<String> first = send(desk, form);
        HttpResponse<String> again = send(desk, form);

        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(again.headers().firstValue("Location"))
                .isEqualTo(first.headers().firstValue("Location"));
    }

    @Test
    @DisplayName("is done once although the line was cut before the answer came, and however many are sent at once")
    void line_cut() throws IOException, InterruptedException {
        Form form = form("5");
        int before = Integer.parseInt(lies());

        cut(form);
        cut(form);
        HttpResponse<String> answer = send(desk, form);

        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location").orElseThrow()).contains("done=");
        for (int i = 0; i < 50 && desk.rooms().lying("FX-W6").intValue() == before; i++) {
            Thread.sleep(Duration.ofMillis(20).toMillis());
        }
        assertThat(lies()).isEqualTo(String.valueOf(before + 5));
    }

    /** Sends all of it and hangs up without reading. */
    private static void cut(Form form) throws IOException {
        URI address = desk.address();
        byte[] body = form.body().getBytes(StandardCharsets.UTF_8);
        String host = address.getHost() + ":" + address.getPort();
        String head = "POST /stores/receive HTTP/1.1\r\nHost: " + host + "\r\nOrigin: http://" + host + "\r\nCookie: "
                + form.cookie() + "\r\nContent-Type: " + FORM + "\r\nContent-Length: " + body.length + "\r\n\r\n";
        try (Socket line = new Socket(address.getHost(), address.getPort())) {
            OutputStream out = line.getOutputStream();
            out.write(head.getBytes(StandardCharsets.UTF_8));
            out.write(body);
            out.flush();
        }
    }

    @Test
    @DisplayName("with another number in it is refused, says what it did, and leads there")
    void changed() throws IOException, InterruptedException {
        Form form = form("6");
        int before = Integer.parseInt(lies());

        String landed = send(desk, form).headers().firstValue("Location").orElseThrow();
        HttpResponse<String> again = send(desk, form.with("quantity", "60"));

        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.body())
                .contains(
                        "This form was sent already",
                        "part FX-W6",
                        "quantity 6,",
                        "nothing was changed",
                        landed.replace("&", "&amp;"));
        assertThat(lies()).isEqualTo(String.valueOf(before + 6));
    }

    @Test
    @DisplayName("with another number of an order in it begins no second order")
    void changedOrder() throws IOException, InterruptedException {
        Form form = formOf("/sales/new");
        form.fields()
                .putAll(Map.of("customer", "Ann Gable", "family", "pannier-van", "built", "1968", "number", "BL-7101"));
        send(desk, "/sales/new", form);
        HttpResponse<String> again = send(desk, "/sales/new", form.with("number", "BL-7102"));

        assertThat(again.statusCode()).isEqualTo(409);
        assertThat(again.body()).contains("This form was sent already", "/sales/order/BL-7101");
        assertThat(desk.book()
                        .<Boolean>read(
                                reading -> reading.orders().find("BL-7102").isPresent()))
                .isFalse();
    }

    @Test
    @DisplayName("is another piece of work where its page was opened anew, though it says the same")
    void two_forms() throws IOException, InterruptedException {
        int before = Integer.parseInt(lies());

        send(desk, form("2"));
        send(desk, form("2"));

        assertThat(lies()).isEqualTo(String.valueOf(before + 4));
    }

    @Test
    @DisplayName("may be mended and sent again where it was refused")
    void refused_first() throws IOException, InterruptedException {
        Form form = form("many");
        String before = lies();

        HttpResponse<String> refused = send(desk, form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Quantity: found 'many'");
        assertThat(lies()).isEqualTo(before);

        assertThat(send(desk, form.with("quantity", "1")).statusCode()).isEqualTo(303);
        assertThat(Integer.parseInt(lies())).isEqualTo(Integer.parseInt(before) + 1);
    }

    @Test
    @DisplayName("is refused without its key")
    void without_a_key() throws IOException, InterruptedException {
        String before = lies();

        assertThat(send(desk, form("3").with("once", "")).body()).contains("without its key");
        assertThat(send(desk, form("3").with("once", "x' or 1=1 --")).statusCode())
                .isEqualTo(422);
        assertThat(lies()).isEqualTo(before);
    }

    @Test
    @DisplayName("is known in the book, so that a desk which is opened again does not do it anew")
    void kept() throws IOException, InterruptedException {
        Form form = form("4");
        send(desk, form);
        try (OpenDesk other = OpenDesk.at(folder)) {
            String before = lies();
            HttpResponse<String> again = send(other, form);
            assertThat(again.statusCode()).isEqualTo(303);
            assertThat(lies()).isEqualTo(before);
        }
    }
}
