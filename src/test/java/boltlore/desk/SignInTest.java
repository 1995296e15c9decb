package boltlore.desk;

import static org.assertj.core.api.Assertions.assertThat;

import boltlore.book.OrderHappening;
import boltlore.book.Subject;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.db.Written;
import boltlore.book.orders.PersonDesk;
import boltlore.desk.frame.Role;
import boltlore.desk.people.People;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A desk that other machines reach")
class SignInTest {

    private static final String PASSWORD = "four plain words here";
    private static final String STORE = "store-password";

    @TempDir
    private static Path folder;

    private static OpenDesk desk = null;
    private static SSLContext trusting = null;

    /** A certificate that nobody vouches for, made by the JDK's own tool and written as the files that a desk takes. */
    @BeforeAll
    static void open() throws IOException, GeneralSecurityException, InterruptedException {
        Path store = folder.resolve("store.p12");
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "desk",
                        "-keyalg",
                        "EC",
                        "-storetype",
                        "PKCS12",
                        "-keystore",
                        store.toString(),
                        "-storepass",
                        STORE,
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=dns:localhost")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("keytool.txt").toFile())
                .start();
        assertThat(keytool.waitFor()).isZero();
        KeyStore keys = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(store)) {
            keys.load(in, STORE.toCharArray());
        }
        Path certificate = pem("CERTIFICATE", keys.getCertificate("desk").getEncoded());
        Path key = pem("PRIVATE KEY", keys.getKey("desk", STORE.toCharArray()).getEncoded());
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(keys);
        trusting = SSLContext.getInstance("TLS");
        trusting.init(null, trust.getTrustManagers(), null);

        try (Book book =
                ((Outcome.Sound<Book>) Book.openOrBegin(new Place.InFile(folder.resolve("book.db")))).value()) {
            People people = new People(book);
            assertThat(people.admit("Sal Wren", Set.of(Role.SALES), PASSWORD).faults())
                    .isEmpty();
            assertThat(people.admit("Sten Ash", Set.of(Role.STORES), PASSWORD).faults())
                    .isEmpty();
        }
        desk = OpenDesk.outside(folder, Set.of("localhost"), certificate, key);
    }

    private static Path pem(String what, byte[] encoded) throws IOException {
        String text = "-----BEGIN " + what + "-----\n" + Base64.getMimeEncoder().encodeToString(encoded) + "\n-----END "
                + what + "-----\n";
        return Files.writeString(folder.resolve(what.replace(' ', '-') + ".pem"), text);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    /** Somebody at a browser of their own. */
    private static final class Person {

        private final HttpClient client = HttpClient.newBuilder()
                .sslContext(trusting)
                .cookieHandler(new CookieManager())
                .build();

        HttpResponse<String> look(String path) {
            return send(HttpRequest.newBuilder(desk.page(path)).GET());
        }

        HttpResponse<String> act(String path, String form) {
            return act(form.startsWith("name=") ? "/sign-in" : "/sales/new", path, form);
        }

        /** @param from page that the form's token stands on */
        HttpResponse<String> act(String from, String path, String form) {
            Matcher token = Pattern.compile("name=\"token\" value=\"([^\"]+)\"")
                    .matcher(look(from).body());
            String proof = token.find() ? token.group(1) : "";
            URI at = desk.page(path);
            return send(HttpRequest.newBuilder(at)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Origin", "https://" + at.getAuthority())
                    .POST(BodyPublishers.ofString("token=" + proof + "&" + form)));
        }

        HttpResponse<String> signIn(String name, String password) {
            return act(
                    "/sign-in",
                    "name=" + URLEncoder.encode(name, StandardCharsets.UTF_8) + "&password="
                            + URLEncoder.encode(password, StandardCharsets.UTF_8));
        }

        private HttpResponse<String> send(HttpRequest.Builder request) {
            try {
                return client.send(request.build(), BodyHandlers.ofString());
            } catch (IOException e) {
                throw new AssertionError(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new AssertionError(e);
            }
        }
    }

    @Test
    void shows_nothing_but_where_to_sign_in_to_whom_it_does_not_know() {
        for (String path : List.of("/", "/sales", "/office", "/sheets/A-1")) {
            assertThat(new Person().look(path).headers().firstValue("Location").orElse(""))
                    .startsWith("/sign-in?to=");
        }
        assertThat(new Person().look("/sign-in").body()).doesNotContain("Stores", "Office");
    }

    @Test
    void opens_the_rooms_that_somebody_works_in_and_no_other() {
        Person person = new Person();
        HttpResponse<String> signed = person.signIn("Sten Ash", PASSWORD);

        assertThat(signed.statusCode()).isEqualTo(303);
        assertThat(signed.headers().firstValue("Set-Cookie").orElse(""))
                .startsWith("__Host-")
                .contains("Secure", "HttpOnly", "SameSite=Strict");
        assertThat(signed.headers().firstValue("Strict-Transport-Security")).isPresent();
        assertThat(person.look("/stores").statusCode()).isEqualTo(200);
        assertThat(person.look("/stores").body()).contains("Sten Ash").doesNotContain("href=\"/office\"");
        assertThat(person.look("/office").statusCode()).isEqualTo(403);
        assertThat(person.look("/sales").statusCode()).isEqualTo(403);
    }

    @Test
    void keeps_journal_and_persons_and_other_rooms_work_from_whom_they_are_not_open_to() {
        Outcome<Written<boltlore.book.Person>> added =
                new PersonDesk(desk.book(), OpenDesk.by()).add("Rowan Ashby", "");
        String key = ((Outcome.Sound<Written<boltlore.book.Person>>) added)
                .value()
                .value()
                .key();
        Person person = new Person();
        person.signIn("Sten Ash", PASSWORD);
        for (String path : List.of(
                "/office/journal",
                "/office/persons",
                "/office/person/" + key,
                "/office/person/" + key + "/erase",
                "/fabrication/film")) {
            assertThat(person.look(path).statusCode()).as(path).isEqualTo(403);
        }
        for (String path : List.of(
                "/office/person/" + key + "/erase",
                "/office/person/" + key + "/export",
                "/fabrication/film",
                "/fabrication/coat/move",
                "/sales/order/BL-1/give-up")) {
            HttpResponse<String> answer = person.act("/stores/receive", path, "reason=mine&once=" + "a".repeat(43));
            assertThat(answer.statusCode()).as(path).isIn(403, 404);
            assertThat(answer.headers().firstValue("Location")).as(path).isEmpty();
        }
        assertThat(desk.book()
                        .read(reading -> reading.persons().find(key).orElseThrow())
                        .erased())
                .isEmpty();
    }

    @Test
    void writes_into_the_journal_who_did_it() {
        Person person = new Person();
        person.signIn("Sal Wren", PASSWORD);
        assertThat(person.act("/sales/new", "customer=Ann&family=pannier-van&built=1968&due=&number=W-1")
                        .statusCode())
                .isEqualTo(303);

        String who = desk.book()
                .read(reading -> reading.persons()
                        .shown(reading.journal()
                                .of(new Subject(OrderHappening.WHAT, "W-1"))
                                .get(0)
                                .stamp()
                                .person()));
        assertThat(who).isEqualTo("Sal Wren");
    }

    @Test
    void does_not_say_whether_the_name_or_the_password_is_wrong() {
        HttpResponse<String> name = new Person().signIn("Nobody", PASSWORD);
        HttpResponse<String> password = new Person().signIn("Sal Wren", "four other words here");

        assertThat(name.statusCode()).isEqualTo(422);
        assertThat(password.statusCode()).isEqualTo(422);
        assertThat(password.body()).contains("Name and password do not go together.");
    }

    @Test
    void lets_nobody_in_any_more_who_has_signed_out() {
        Person person = new Person();
        person.signIn("Sal Wren", PASSWORD);
        assertThat(person.look("/sales").statusCode()).isEqualTo(200);
        assertThat(person.act("/sign-out", "").statusCode()).isEqualTo(303);

        assertThat(person.look("/sales").statusCode()).isEqualTo(303);
    }

    @Test
    void keeps_no_password_as_it_was_typed_and_takes_no_short_one() throws IOException {
        assertThat(new String(Files.readAllBytes(folder.resolve("book.db")), StandardCharsets.ISO_8859_1))
                .doesNotContain(PASSWORD);
        People people = new People(desk.book());

        assertThat(people.admit("Pat", Set.of(Role.OWNER), "fourteen chars").faults())
                .isNotEmpty();
        assertThat(people.admit("Pat", Set.of(), PASSWORD).faults()).isNotEmpty();
        assertThat(people.admit("Pat", Set.of(Role.OWNER), "fifteen letters").faults())
                .isEmpty();
    }
}
