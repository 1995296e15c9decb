package boltlore.desk.frame;

import boltlore.book.By;
import boltlore.book.db.BookLost;
import boltlore.book.db.DoneBefore;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.BindException;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.jspecify.annotations.Nullable;

/** Answers browsers: looks at each request, hands it to its room, and writes what that answers. */
public final class Server implements AutoCloseable {

    private static final int HTTPS = 443;
    private static final long LARGEST_FORM_BYTES = 256L * 1024;
    private static final int LARGEST_HEADERS_BYTES = 16 * 1024;
    private static final int SILENT_MS = 30_000;

    private static final String FIRST_WORDS = "It reads the catalogue.";

    private final Access access;
    private final Supplier<By> by;
    private final PrintWriter log;
    private final Guard guard;
    private final SignIn signIn;
    private volatile Opened opened = new Opened(List.of());
    private volatile String waiting = FIRST_WORDS;
    private final AtomicLong failures = new AtomicLong();
    private final Javalin javalin;

    /** What is shown of the rooms that are open; none where the desk still opens. */
    private static final class Opened {
        private final List<Room> rooms;
        private final Routes routes;
        private final Pages pages;

        Opened(List<Room> rooms) {
            this.rooms = List.copyOf(rooms);
            this.routes = new Routes(rooms);
            this.pages = new Pages(rooms);
        }
    }

    /** Begins to answer for these rooms. */
    public Server(List<Room> rooms, Access access, Supplier<By> by, PrintWriter log) throws IOException {
        this(access, by, log);
        open(rooms);
    }

    /**
     * Begins to answer, with a page that waits until there are rooms.
     *
     * @param by who works here, asked anew for each call; of those who have signed in their own name counts
     * @param log where failures of the program are told, without anything that was asked or said
     * @throws BindException where something else answers at its address and port
     * @throws IOException where the certificate or its key cannot be read
     */
    public Server(Access access, Supplier<By> by, PrintWriter log) throws IOException {
        this.access = access;
        this.by = by;
        this.log = log;
        Access.Outside outside = access.outside();
        this.guard = new Guard(outside != null);
        this.signIn = new SignIn(
                outside == null ? null : outside.people(), () -> by.get().at());
        SslContextFactory.@Nullable Server tls = outside == null ? null : Tls.of(outside);
        this.javalin = Javalin.create(config -> configure(config, tls));
        try {
            javalin.start();
        } catch (JavalinBindException taken) {
            BindException refused = new BindException(String.valueOf(taken.getMessage()));
            refused.initCause(taken);
            throw refused;
        }
    }

    /** From now on the rooms answer. */
    public void open(List<Room> rooms) {
        opened = new Opened(rooms);
    }

    /** What whoever waits reads, in a sentence. */
    public void waitsFor(String says) {
        waiting = says;
    }

    public URI address() {
        Access.Outside outside = access.outside();
        return outside == null
                ? URI.create("http://" + access.address() + ":" + javalin.port() + "/")
                : URI.create("https://" + outside.names().iterator().next() + ":" + javalin.port() + "/");
    }

    @Override
    public void close() {
        javalin.stop();
    }

    private void configure(JavalinConfig config, SslContextFactory.@Nullable Server tls) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_FORM_BYTES;
        config.jetty.modifyHttpConfiguration(Server::quiet);
        config.jetty.addConnector((server, http) -> connector(server, http, tls));
        config.routes.before(context -> {
            guard.look(context, hosts());
            if (opened.rooms.isEmpty() && !context.path().startsWith("/assets/")) {
                waits(context);
            } else {
                signIn.look(context);
            }
        });
        signIn.open(config, (context, shown) -> show(context, "", shown, call(context, Map.of(), Map.of())));
        Assets.byPath().forEach((path, asset) -> config.routes.get(path, asset::hand));
        config.routes.get("/", context -> context.redirect(opened.rooms.get(0).path(), HttpStatus.SEE_OTHER));
        config.routes.get("/*", context -> guarded(context, false, context.queryParamMap()));
        config.routes.post("/*", context -> guarded(context, true, context.formParamMap()));
        failures(config);
    }

    private ServerConnector connector(
            org.eclipse.jetty.server.Server server, HttpConfiguration http, SslContextFactory.@Nullable Server tls) {
        HttpConfiguration configured = new HttpConfiguration(http);
        if (tls != null) {
            // The guard looks at the name that is asked for.
            configured.addCustomizer(new SecureRequestCustomizer(false));
        }
        HttpConnectionFactory factory = new HttpConnectionFactory(configured);
        ServerConnector connector =
                tls == null ? new ServerConnector(server, factory) : new ServerConnector(server, tls, factory);
        connector.setHost(access.address());
        connector.setPort(access.port());
        connector.setIdleTimeout(SILENT_MS);
        return connector;
    }

    private static void quiet(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setRequestHeaderSize(LARGEST_HEADERS_BYTES);
    }

    private void failures(JavalinConfig config) {
        config.routes.exception(
                Guard.Refused.class, (refused, context) -> tell(context, refused.status(), refused.says()));
        config.routes.exception(DoneBefore.class, this::before);
        config.routes.exception(BookLost.class, (lost, context) -> tell(context, 503, Sentences.of(lost.fault())));
        config.routes.exception(
                HttpResponseException.class,
                (answer, context) -> tell(context, answer.getStatus(), Sentences.of(answer)));
        config.routes.exception(Exception.class, this::failed);
    }

    /** Names that lead here without a name server that somebody else looks after. */
    private Set<String> hosts() {
        int port = javalin.port();
        Access.Outside outside = access.outside();
        Stream<String> names =
                outside == null ? Stream.of(Access.LOOP_BACK, "localhost", "[::1]") : outside.names().stream();
        return names.flatMap(name -> outside != null && port == HTTPS
                        ? Stream.of(name, name + ":" + port)
                        : Stream.of(name + ":" + port))
                .collect(Collectors.toSet());
    }

    /** RFC 9110, 15.6.4: not yet, and when to ask again. */
    private void waits(Context context) {
        context.status(HttpStatus.SERVICE_UNAVAILABLE);
        context.header("Retry-After", "1");
        context.html(opened.pages.waiting(waiting));
        context.skipRemainingHandlers();
    }

    /** What is wrong with the program itself, as a class that is not there, is answered and told like any other failure. */
    private void guarded(Context context, boolean acts, Map<String, List<String>> said) {
        Routes.Found found =
                opened.routes.find(acts, context.path()).orElseThrow(() -> new NotFoundResponse(context.path()));
        try {
            answer(context, found, said);
        } catch (Error failure) {
            failed(failure, context);
        }
    }

    private void answer(Context context, Routes.Found found, Map<String, List<String>> said) {
        Room room = found.room();
        if (!room.role().admits(signIn.roles(context))) {
            throw new Guard.Refused(403, "This room is not one that you work in; ask whoever owns the workshop.");
        }
        Call call = call(context, found.names(), said);
        Answer answer = found.answer().apply(call);
        if (answer instanceof Answer.Shown shown) {
            show(context, room.path(), shown, call);
        } else if (answer instanceof Answer.Done done) {
            context.redirect(done.path(), HttpStatus.SEE_OTHER);
        } else if (answer instanceof Answer.Handed handed) {
            context.contentType(Handed.type(handed.file().name()));
            context.header(
                    "Content-Disposition", Handed.disposition(handed.file().name()));
            context.result(handed.file().content());
        } else if (answer instanceof Answer.SentAlready sent) {
            sentAlready(context, room.path(), sent, call);
        } else if (answer instanceof Answer.Missing missing) {
            tell(context, 404, missing.says(), room.path());
        }
    }

    private Call call(Context context, Map<String, String> names, Map<String, List<String>> said) {
        By here = by.get();
        By who = signIn.who(context)
                .map(signed -> new By(here.at(), here.today(), here.desk(), signed.name()))
                .orElse(here);
        return new Call(names, said, who.once(Guard.once(context, said), Guard.form(context, said)));
    }

    private void before(DoneBefore done, Context context) {
        if (done.changed()) {
            Answer.SentAlready sent = new Answer.SentAlready(done.first(), Guard.from(context));
            sentAlready(context, "", sent, call(context, Map.of(), Map.of()));
        } else {
            context.redirect(Guard.from(context), HttpStatus.SEE_OTHER);
        }
    }

    private void sentAlready(Context context, String room, Answer.SentAlready sent, Call call) {
        show(context, room, Answer.page("Sent already", "frame/sent.jte", sent), call);
        context.status(HttpStatus.CONFLICT);
    }

    private void show(Context context, String room, Answer.Shown shown, Call call) {
        context.status(shown.refused().isEmpty() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
        context.html(opened.pages.write(shown, room, head(context), call, context.path()));
    }

    private Pages.Reader head(Context context) {
        String token = context.attribute(Guard.TOKEN);
        // Whom the guard has turned away is shown nothing of the house.
        return token == null
                ? new Pages.Reader("", Set.of(), false)
                : new Pages.Reader(
                        token, signIn.roles(context), signIn.who(context).isPresent());
    }

    private void tell(Context context, int status, String says) {
        tell(context, status, says, "");
    }

    /** @param room that leads on from there, where the page is there and has nothing to show; or empty */
    private void tell(Context context, int status, String says, String room) {
        context.status(status);
        String missing = room.isEmpty() ? "There is no such page" : "Nothing to show";
        Answer.Shown told = Answer.page(status == 404 ? missing : "Not done", "frame/failed.jte", says);
        context.html(opened.pages.write(told, room, head(context), call(context, Map.of(), Map.of()), context.path()));
    }

    /** What was asked or said may be personal: of a failure only its number, its page and its place in the program are told. */
    private void failed(Throwable failure, Context context) {
        long number = failures.incrementAndGet();
        synchronized (log) {
            log.println("Failure " + number + ": " + failure.getClass().getName());
            for (StackTraceElement line : failure.getStackTrace()) {
                log.println("    " + line);
            }
            log.flush();
        }
        tell(
                context,
                500,
                "The desk could not do that. It is failure " + number
                        + " of this desk; what it wrote says more. Look whether it was done before you do it again.");
    }
}
