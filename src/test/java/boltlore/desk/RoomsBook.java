package boltlore.desk;

import boltlore.book.OrderState;
import boltlore.book.db.Book;
import boltlore.book.orders.Bench;
import boltlore.book.orders.FrozenKits;
import boltlore.book.orders.OrderDesk;
import boltlore.book.stores.PickLine;
import boltlore.book.stores.StoresDesk;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Tracked;
import boltlore.faults.Outcome;
import boltlore.order.json.OrderReader;
import boltlore.trades.KitInWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/** A book with two orders of the demo that are owed, and all that the first one needs in the stores. */
final class RoomsBook {

    static final String FIRST = "BL-1001";
    static final String SECOND = "BL-1004";

    private final Book book;
    private final Bench bench;

    RoomsBook(Book book, Bench bench) {
        this.book = book;
        this.bench = bench;
    }

    void fill() {
        confirm(FIRST);
        confirm(SECOND);
    }

    /** An order that is lost as soon as it is drafted. */
    void give(String order) {
        OrderDesk desk = new OrderDesk(book, OpenDesk.by());
        Path file = bench.folder().resolve("orders/" + order.toLowerCase(Locale.ROOT) + ".json");
        sound(OrderReader.read(file, bench.catalogue())
                .then(read -> desk.draft(List.of(read), ""))
                .then(drafted -> desk.move(order, OrderState.LOST, "bought elsewhere")));
    }

    private void confirm(String order) {
        OrderDesk desk = new OrderDesk(book, OpenDesk.by());
        Path file = bench.folder().resolve("orders/" + order.toLowerCase(Locale.ROOT) + ".json");
        sound(OrderReader.read(file, bench.catalogue())
                .then(read -> desk.draft(List.of(read), ""))
                .then(drafted -> desk.quote(order, bench, new OrderDesk.Asked(null, null), ""))
                .then(quoted -> desk.confirm(
                        order, LocalDate.now(ZoneId.systemDefault()).plusDays(90), "")));
    }

    KitInWork kit(String order) {
        return sound(book.read(reading ->
                        FrozenKits.in(reading, bench, OpenDesk.by().today()).then(kits -> kits.of(List.of(order)))))
                .get(0);
    }

    List<PickLine> lines(String order) {
        KitInWork kit = kit(order);
        return book.read(reading -> PickLine.of(reading, kit));
    }

    /** Takes in what an order has still to get; serial numbers are PART#1, PART#2, the lot is L-PART. */
    void stock(String order) {
        List<Arrival> arrivals = new ArrayList<>();
        for (PickLine line : lines(order)) {
            Tracked tracked = line.part().tracked();
            String part = line.part().number().text();
            List<String> serials = tracked == Tracked.SERIAL
                    ? IntStream.rangeClosed(
                                    1, line.left().setScale(0, RoundingMode.UP).intValueExact())
                            .mapToObj(piece -> part + "#" + piece)
                            .toList()
                    : List.of();
            arrivals.add(arrival(part, line.finish(), line.left(), tracked == Tracked.LOT ? "L-" + part : "", serials));
        }
        sound(new StoresDesk(book, OpenDesk.by(), bench).receive(arrivals, ""));
    }

    /** Takes one part in. */
    void stock(String part, int quantity) {
        sound(new StoresDesk(book, OpenDesk.by(), bench)
                .receive(List.of(arrival(part, "", BigDecimal.valueOf(quantity), "", List.of())), ""));
    }

    private static Arrival arrival(String part, String finish, BigDecimal quantity, String lot, List<String> serials) {
        return new Arrival(part, finish, quantity, "", lot, serials, "", false);
    }

    BigDecimal lying(String part) {
        return book.read(reading ->
                reading.stock().of(part).stream().map(row -> row.quantity()).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    private static <T> T sound(Outcome<T> outcome) {
        if (outcome instanceof Outcome.Sound<T> sound) {
            return sound.value();
        }
        throw new AssertionError(outcome.faults().toString());
    }
}
