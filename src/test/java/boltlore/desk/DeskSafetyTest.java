package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.desk.frame.Access;
import boltlore.desk.frame.Role;
import boltlore.desk.frame.Room;
import boltlore.desk.frame.Server;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What other sites and programs try; the headers are those of the OWASP HTTP Headers Cheat Sheet (from memory). */
@DisplayName("The desk answers its own pages and nobody else's")
class DeskSafetyTest {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private static Path folder;

    private static OpenDesk desk = null;

    @BeforeAll
    static void open() {
        desk = OpenDesk.at(folder);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static String own() {
        String address = desk.address().toString();
        return address.substring(0, address.length() - 1);
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create(own() + path));
    }

    /** A form as a browser has it: with its cookie and its token. */
    private record Form(String cookie, String token) {

        static Form read() {
            HttpResponse<String> page = send(at("/sales/new").GET());
            Matcher token = Pattern.compile("name=\"token\" value=\"([^\"]+)\"").matcher(page.body());
            assertThat(token.find()).isTrue();
            String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
            return new Form(cookie.substring(0, cookie.indexOf(';')), token.group(1));
        }

        HttpRequest.Builder post(String body) {
            return at("/sales/new")
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Cookie", cookie)
                    .header("Origin", own())
                    .POST(BodyPublishers.ofString("token=" + token + "&" + body));
        }
    }

    private static final String NEW = "customer=Ann+Gable&family=pannier-van&built=1968&due=&number=";

    private static boolean isThere(String order) {
        return desk.book().read(reading -> reading.orders().find(order)).isPresent();
    }

    @Test
    void a_form_of_this_desk_is_taken() {
        assertThat(send(Form.read().post(NEW + "S-1")).statusCode()).isEqualTo(303);
        assertThat(isThere("S-1")).isTrue();
    }

    @Test
    void the_same_form_sent_twice_is_done_once_and_another_one_is_not_held_back() {
        // Each form of each page has a key of its own: another piece of work never comes with the same one.
        Form form = Form.read();
        String body = "once=abc&" + NEW + "S-2";
        HttpResponse<String> first = send(form.post(body));
        HttpResponse<String> again = send(form.post(body).header("Referer", own() + "/sales/new"));

        assertThat(first.statusCode()).isEqualTo(303);
        assertThat(again.statusCode()).isEqualTo(303);
        assertThat(again.headers().firstValue("Location")).hasValue("/sales/order/S-2");
        assertThat(send(form.post("once=abd&" + NEW + "S-3")).headers().firstValue("Location"))
                .hasValue("/sales/order/S-3");
    }

    @Test
    void without_a_token_nothing_is_done() {
        Form form = new Form(Form.read().cookie(), "");

        assertThat(send(form.post(NEW + "S-4")).statusCode()).isEqualTo(403);
        assertThat(isThere("S-4")).isFalse();
    }

    @Test
    void the_token_of_another_browser_is_none() {
        Form form = new Form(Form.read().cookie(), Form.read().token());

        assertThat(send(form.post(NEW + "S-5")).statusCode()).isEqualTo(403);
        assertThat(isThere("S-5")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://elsewhere.example", "null", "http://127.0.0.1:1", "https://127.0.0.1"})
    void a_form_of_another_site_is_refused_although_its_token_is_right(String origin) {
        Form form = Form.read();
        HttpRequest.Builder request = at("/sales/new")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Cookie", form.cookie())
                .header("Origin", origin)
                .POST(BodyPublishers.ofString("token=" + form.token() + "&" + NEW + "S-6"));

        assertThat(send(request).statusCode()).isEqualTo(403);
        assertThat(isThere("S-6")).isFalse();
    }

    @Test
    void a_form_that_says_of_no_site_that_it_comes_from_is_refused() {
        Form form = Form.read();
        HttpRequest.Builder request = at("/sales/new")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Cookie", form.cookie())
                .POST(BodyPublishers.ofString("token=" + form.token() + "&" + NEW + "S-7"));

        assertThat(send(request).statusCode()).isEqualTo(403);
    }

    @Test
    void a_name_that_somebody_elses_name_server_leads_here_is_not_answered() throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), desk.address().getPort())) {
            socket.getOutputStream()
                    .write("GET /sales HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            InputStream in = socket.getInputStream();
            String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);

            assertThat(answer).startsWith("HTTP/1.1 421").doesNotContain("<table");
        }
    }

    @Test
    void every_answer_says_what_a_browser_may_do_with_it() {
        for (String path : List.of("/sales", "/none", "/sales/new")) {
            HttpResponse<String> page = send(at(path).GET());

            assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                    .contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(page.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
            assertThat(page.headers().firstValue("X-Frame-Options")).hasValue("DENY");
            assertThat(page.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
            assertThat(page.headers().firstValue("Cache-Control")).hasValue("no-store");
            assertThat(page.headers().firstValue("Server")).isEmpty();
            assertThat(page.headers().firstValue("Set-Cookie").orElse("")).contains("HttpOnly", "SameSite=Strict");
            assertThat(page.body()).doesNotContain("style=", "onclick=", "<script>");
        }
    }

    @Test
    void a_form_that_is_too_large_is_refused_in_a_sentence() {
        HttpResponse<String> answer = send(Form.read().post(NEW + "x".repeat(400_000)));

        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("too large");
    }

    @Test
    void what_is_not_ticked_or_not_ordered_is_told_with_a_way_back() {
        assertThat(send(at("/stores/pick").GET()).body())
                .contains("one at least", "Back to Stores")
                .doesNotContain("COM1");
        send(Form.read().post(NEW + "S-8"));
        for (String path : List.of("/stores/pick?order=S-8", "/bench/test/S-8", "/bench/ship/S-8")) {
            HttpResponse<String> page = send(at(path).GET());
            assertThat(page.statusCode()).isEqualTo(404);
            assertThat(page.body()).contains("'draft'", "its customer has ordered", "Back to");
        }
    }

    @Test
    void a_class_that_is_not_there_is_told_as_a_failure_with_a_number() throws IOException {
        StringWriter log = new StringWriter();
        Room broken = new Room() {
            @Override
            public Role role() {
                return Role.ANY;
            }

            @Override
            public String path() {
                return "/broken";
            }

            @Override
            public String says() {
                return "Broken";
            }

            @Override
            public void open(Doors doors) {
                doors.look("/broken", call -> {
                    throw new NoClassDefFoundError("gone");
                });
            }
        };
        try (Server server = new Server(List.of(broken), Access.here(0), OpenDesk::by, new PrintWriter(log, true))) {
            HttpResponse<String> page = send(
                    HttpRequest.newBuilder(server.address().resolve("/broken")).GET());

            assertThat(page.statusCode()).isEqualTo(500);
            assertThat(page.body()).contains("It is failure 1 of this desk");
            assertThat(log.toString())
                    .contains("Failure 1: java.lang.NoClassDefFoundError")
                    .doesNotContain("gone");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "TRACE", "OPTIONS", "PATCH"})
    void only_looking_and_sending_forms_is_answered(String method) {
        assertThat(send(at("/sales").method(method, BodyPublishers.noBody())).statusCode())
                .isBetween(400, 499);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/office/person/P-1/export",
                "/fabrication/coat/move",
                "/stores/receive/wrong",
                "/stores/part/scrap",
                "/sales/order/BL-1/copy"
            })
    void nothing_is_done_by_looking(String path) {
        long before = entries();
        assertThat(send(at(path + "?reason=x&entry=1&part=FX-N6&quantity=1").GET())
                        .statusCode())
                .isBetween(400, 499);
        assertThat(entries()).isEqualTo(before);
    }

    private static long entries() {
        return desk.book()
                .read(reading -> reading.journal().last().orElseThrow().number());
    }

    @Test
    void what_there_is_not_is_said_in_a_sentence() {
        assertThat(send(at("/none").GET()).body()).contains("No page of this desk has that address.");
        assertThat(send(at("/sales/order/%3Cb%3E").GET()).body())
                .contains("&lt;b&gt;")
                .doesNotContain("<b>");
        assertThat(desk.log()).isEmpty();
    }
}
