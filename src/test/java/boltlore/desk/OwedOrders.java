package boltlore.desk;

import boltlore.book.By;
import boltlore.book.Frozen;
import boltlore.book.Offer;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import boltlore.book.db.Book;
import boltlore.book.db.Writing;
import boltlore.faults.Outcome;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Supplier;

/** As many orders that are owed as a test likes: the demo's confirmed ones again and again, each on a day of its own. */
final class OwedOrders {

    private static final int AT_ONCE = 50;
    private static final int DAYS = 180;
    private static final int MOST = 100_000;

    private final Book book;
    private final Supplier<By> by;

    OwedOrders(Book book, Supplier<By> by) {
        this.book = book;
        this.by = by;
    }

    /** Gives up those whose kits are made up, which no catalogue resolves, and promises so many of the demo's instead. */
    void promise(int count) {
        List<OrderState> owed = OrderState.ALL.stream().filter(OrderState::owed).toList();
        List<OrderStanding> known = book.read(reading -> reading.orders().in(owed, MOST));
        List<String> madeUp = known.stream()
                .map(OrderStanding::name)
                .filter(name -> name.startsWith("SC-"))
                .toList();
        for (int from = 0; from < madeUp.size(); from += AT_ONCE) {
            List<String> some = madeUp.subList(from, Math.min(madeUp.size(), from + AT_ONCE));
            write(writing ->
                    some.forEach(name -> writing.add(new OrderHappening.Moved(name, OrderState.CANCELLED), "made up")));
        }
        List<OrderStanding> demo =
                known.stream().filter(order -> order.name().startsWith("BL-")).toList();
        int there = (int)
                known.stream().filter(order -> order.name().startsWith("OW-")).count();
        for (int from = there; from < count; from += AT_ONCE) {
            int first = from;
            write(writing -> {
                for (int i = first; i < Math.min(count, first + AT_ONCE); i++) {
                    again(writing, demo.get(i % demo.size()), i);
                }
            });
        }
    }

    private void again(Writing writing, OrderStanding order, int number) {
        String name = "OW-" + number;
        LocalDate due = by.get().today().plusDays(number % DAYS);
        List<QuotedVersion> versions = writing.orders().quotations(order.name());
        Offer offer = versions.get(versions.size() - 1).offer();
        Frozen stands = versions.get(versions.size() - 1).stands();
        writing.add(
                new OrderHappening.Drafted(
                        name,
                        order.family(),
                        order.customer(),
                        order.partner(),
                        due,
                        new TreeMap<>(writing.orders().choices(order.name())),
                        order.draft()),
                "");
        writing.add(new OrderHappening.Quoted(name, 1, offer, stands), "");
        writing.add(new OrderHappening.Ordered(name, 1, due), "");
    }

    private void write(java.util.function.Consumer<Writing> work) {
        Outcome<?> written = book.write(by.get(), writing -> {
            work.accept(writing);
            return Outcome.sound(true);
        });
        if (!written.faults().isEmpty()) {
            throw new IllegalStateException(written.faults().toString());
        }
    }
}
