package boltlore.desk;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.desk.frame.Access;
import boltlore.desk.frame.Server;
import boltlore.desk.frame.Workshop;
import boltlore.desk.people.People;
import boltlore.faults.Outcome;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;

/** A desk at a book of its own, on a port that is free. */
final class OpenDesk implements AutoCloseable {

    private static final Path FOLDER = Path.of("catalog");

    /** Read once: it never changes, and reading it takes longer than most journeys. */
    private static final Bench BENCH = Bench.of(sound(CatalogueReader.read(FOLDER)), FOLDER);

    private final StringWriter log = new StringWriter();
    private final Book book;
    private final Server server;

    private OpenDesk(Book book, Access access) {
        this.book = book;
        this.server = open(book, access, log);
    }

    private static Server open(Book book, Access access, StringWriter log) {
        try {
            return Desk.open(new Workshop(BENCH, book), access, OpenDesk::by, new PrintWriter(log, true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** At an empty book in that folder, or the one that is there. */
    static OpenDesk at(Path folder, int port) {
        return new OpenDesk(book(folder), Access.here(port));
    }

    private static Book book(Path folder) {
        return sound(Book.openOrBegin(new Place.InFile(folder.resolve("book.db"))));
    }

    /** One that other machines reach, by those whom its book knows. */
    static OpenDesk outside(Path folder, Set<String> names, Path certificate, Path key) {
        Book book = book(folder);
        return new OpenDesk(
                book, new Access("127.0.0.1", 0, new Access.Outside(names, certificate, key, new People(book))));
    }

    static OpenDesk at(Path folder) {
        return at(folder, 0);
    }

    /** With the demo's orders. */
    OpenDesk withDemo() {
        sound(new DemoBook(book, BENCH, OpenDesk::by).fill());
        return this;
    }

    /** What the rooms' journeys begin with. */
    RoomsBook rooms() {
        return new RoomsBook(book, BENCH);
    }

    static By by() {
        return new By(Instant.now(), LocalDate.now(ZoneId.systemDefault()), "front desk", "Kim Aster");
    }

    static Catalogue catalogue() {
        return BENCH.catalogue();
    }

    Book book() {
        return book;
    }

    URI address() {
        return server.address();
    }

    URI page(String path) {
        return address().resolve(path);
    }

    /** What was told of failures. */
    String log() {
        return log.toString();
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }

    @Override
    public void close() {
        server.close();
        book.close();
    }
}
