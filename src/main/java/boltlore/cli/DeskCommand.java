package boltlore.cli;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.desk.DemoBook;
import boltlore.desk.Desk;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.desk.people.People;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.json.JsonOut;
import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Opens the pages of the rooms for the browsers of this machine, until it is interrupted. */
@Command(name = "desk", description = "Open the pages of all rooms in a browser of this machine; Ctrl-C ends it.")
final class DeskCommand extends BookCommand {

    private static final int PORT = 7326;
    private static final int HIGHEST_PORT = 65_535;
    private static final long LONGEST_WAIT_SECONDS = 10;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port on the loop-back address, " + PORT + " without it; 0 takes one that is free.")
    private int port = PORT;

    @Option(
            names = "--demo",
            description =
                    "Show the orders of the catalogue's folder 'orders' in a book of its own, which is thrown away"
                            + " at the end.")
    private boolean demo;

    @Option(names = "--open", description = "Open the browser too.")
    private boolean open;

    @ArgGroup(exclusive = false)
    private @Nullable Outside outside;

    /** What it takes to be reached from other machines; all of it or none. */
    static final class Outside {
        @Option(
                names = "--address",
                paramLabel = "ADDRESS",
                required = true,
                description =
                        "Answer other machines too, on this address of the machine, or on 0.0.0.0 for all: over TLS"
                                + " and for those who sign in, whom 'desk admit' lets in.")
        private String address = "";

        @Option(
                names = "--name",
                paramLabel = "NAME",
                required = true,
                split = ",",
                description = "The machine's name in the certificate, under which browsers ask for it.")
        private List<String> names = new ArrayList<>();

        @Option(
                names = "--certificate",
                paramLabel = "FILE",
                required = true,
                description = "The certificate, a PEM file.")
        private Path certificate = Path.of("");

        @Option(
                names = "--key",
                paramLabel = "FILE",
                required = true,
                description = "Its private key, a PEM file (PKCS #8).")
        private Path key = Path.of("");
    }

    @Mixin
    private CatalogueOption catalogue = new CatalogueOption();

    @Override
    Outcome<Integer> answer(Screen screen, Place place) {
        if (port < 0 || port > HIGHEST_PORT) {
            return Outcome.faulty(Fault.of("--port", String.valueOf(port), "a number from 0 to " + HIGHEST_PORT, ""));
        }
        return by().then(by -> demo
                ? DemoBook.with(demos -> begin(screen, Access.here(port), desk -> demo(desk, demos)))
                : outside == null
                        ? begin(screen, Access.here(port), desk -> bench().then(bench -> open(desk, bench, place)))
                        : inBookOrNew(
                                place,
                                book -> access(book)
                                        .then(access -> begin(
                                                screen,
                                                access,
                                                desk -> bench().then(
                                                                bench -> opened(desk, new Workshop(bench, book)))))));
    }

    private Outcome<Bench> bench() {
        HeadStart.forKits();
        return catalogue.read().then(read -> Outcome.sound(Bench.of(read, catalogue.folder())));
    }

    private Outcome<Integer> open(Begun desk, Bench bench, Place place) {
        return inBookOrNew(place, book -> opened(desk, new Workshop(bench, book)));
    }

    private Outcome<Integer> demo(Begun desk, Place place) {
        return bench().then(bench -> inBookOrNew(place, book -> {
            desk.server().waitsFor("It takes down, quotes and confirms the orders of the demo.");
            return new DemoBook(book, bench, this::who).fill().then(quoted -> opened(desk, new Workshop(bench, book)));
        }));
    }

    /** Who works here was looked at before the desk was opened. */
    private By who() {
        if (by() instanceof Outcome.Sound<By> sound) {
            return sound.value();
        }
        throw new IllegalStateException("The name was sound before");
    }

    /** A desk that answers already, while what it shows is still read. */
    private record Begun(Server server, Screen screen, CountDownLatch asked) {}

    /** Answers at once, so that a browser may wait for the rest; then does the rest. */
    private Outcome<Integer> begin(Screen screen, Access access, Function<Begun, Outcome<Integer>> rest) {
        CountDownLatch asked = new CountDownLatch(1);
        CountDownLatch closed = new CountDownLatch(1);
        Thread ending = new Thread(() -> end(asked, closed), "ending");
        Runtime.getRuntime().addShutdownHook(ending);
        try (Server server = new Server(access, this::who, aside())) {
            if (open) {
                browse(server.address());
            }
            return rest.apply(new Begun(server, screen, asked));
        } catch (BindException taken) {
            return Outcome.faulty(Fault.of(
                    "--port",
                    "port " + access.port() + ", at which something else answers, or may",
                    "a port that is free",
                    "Another desk may be open there: go on in its browser page, or take another port; --port 0 takes one"
                            + " that is free."));
        } catch (IOException e) {
            return Outcome.faulty(
                    Fault.of("--certificate", String.valueOf(e.getMessage()), "a certificate and its private key", ""));
        } finally {
            closed.countDown();
            Interruptible.forget(ending);
        }
    }

    private Outcome<Integer> opened(Begun desk, Workshop workshop) {
        Desk.open(desk.server(), workshop, this::who);
        desk.screen()
                .line(
                        json()
                                ? JsonOut.object()
                                        .put("desk", desk.server().address().toString())
                                        .written()
                                        .stripTrailing()
                                : "The desk is open at " + desk.server().address()
                                        + (outside == null ? " for this machine alone" : " for whoever signs in")
                                        + "; Ctrl-C ends it.");
        desk.screen().flush();
        try {
            desk.asked().await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Outcome.sound(Exit.OK);
    }

    /** A desk that other machines reach lets nobody in who is not known. */
    private Outcome<Access> access(Book book) {
        Outside asked = Objects.requireNonNull(outside);
        People people = new People(book);
        if (people.all().isEmpty()) {
            return Outcome.faulty(Fault.of(
                    "--address",
                    "nobody who may sign in",
                    "somebody who may, before other machines reach the desk",
                    "'boltlore desk admit NAME --role owner' lets somebody in."));
        }
        Set<String> names = new LinkedHashSet<>(asked.names);
        return Outcome.sound(
                new Access(asked.address, port, new Access.Outside(names, asked.certificate, asked.key, people)));
    }

    /** What was begun is finished before the program ends. */
    private static void end(CountDownLatch asked, CountDownLatch closed) {
        asked.countDown();
        try {
            if (!closed.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Where there is no browser to be had, the address has been printed. */
    private static void browse(URI address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> words = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address.toString())
                : List.of(system.contains("mac") ? "open" : "xdg-open", address.toString());
        try {
            new ProcessBuilder(words)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // Nothing is lost: the address stands on the screen.
        }
    }
}
