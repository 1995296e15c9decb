package boltlore.desk;

import boltlore.book.By;
import boltlore.book.db.Book;
import boltlore.book.db.Place;
import boltlore.book.orders.Bench;
import boltlore.book.orders.OrderDesk;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import boltlore.order.json.OrderReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A book to look at: the orders of a catalogue as drafts, some quoted, some confirmed. It lies in a temporary folder. */
public final class DemoBook {

    private static final int QUOTED = 4;
    private static final int CONFIRMED = 2;

    private final Book book;
    private final Bench bench;
    private final Supplier<By> by;

    /** @param by who fills it, asked anew for each call */
    public DemoBook(Book book, Bench bench, Supplier<By> by) {
        this.book = book;
        this.bench = bench;
        this.by = by;
    }

    /**
     * Takes the orders down and tells how many are quoted. One that something stops stays a draft, as it would at any desk.
     */
    public Outcome<Integer> fill() {
        return orders().then(this::fill);
    }

    private Outcome<List<Order>> orders() {
        Path folder = bench.folder().resolve("orders");
        try (Stream<Path> files = Files.list(folder)) {
            return Outcome.all(files.filter(DemoBook::isOrder)
                    .sorted()
                    .map(file -> OrderReader.read(file, bench.catalogue()))
                    .toList());
        } catch (IOException e) {
            return Outcome.faulty(Fault.of(folder.toString(), "no folder of orders", "orders to show", ""));
        }
    }

    /** What is expected of the demo's orders stands beside them and is no order. */
    private static boolean isOrder(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".json") && !name.startsWith(".") && !name.equals("expected.json");
    }

    private Outcome<Integer> fill(List<Order> orders) {
        return new OrderDesk(book, by.get()).draft(orders, "demo").then(drafted -> {
            int quoted = 0;
            for (Order order : orders) {
                if (quoted < QUOTED && quote(order.name())) {
                    quoted++;
                    if (quoted <= CONFIRMED) {
                        new OrderDesk(book, by.get()).confirm(order.name(), null, "demo");
                    }
                }
            }
            return Outcome.sound(quoted);
        });
    }

    private boolean quote(String order) {
        return new OrderDesk(book, by.get())
                .quote(order, bench, new OrderDesk.Asked(null, null), "demo")
                .faults()
                .isEmpty();
    }

    /** Works with a place for a book, which is taken away afterwards. */
    public static <T> Outcome<T> with(Function<Place, Outcome<T>> work) {
        try {
            Path folder = Files.createTempDirectory("boltlore-demo");
            try {
                return work.apply(new Place.InFile(folder.resolve("book.db")));
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            return Outcome.faulty(Fault.of(
                    System.getProperty("java.io.tmpdir", ""),
                    "no room for the demo's book",
                    "a folder for temporary files that may be written",
                    "Make room there."));
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(path -> {
                try {
                    Files.deleteIfExists(path);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
