package boltlore.book.orders;

import boltlore.answers.OrderKit;
import boltlore.bill.Bill;
import boltlore.book.Entry;
import boltlore.book.OrderStanding;
import boltlore.book.db.Book;
import boltlore.book.db.Orders;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.order.Order;
import java.util.function.BiFunction;

/** The kit of an order as it was quoted or frozen, resolved again from the catalogue as it was. */
public final class FrozenKit {

    private FrozenKit() {}

    /**
     * Works with the kit again, customer and others by their names.
     *
     * @return faulty where the order has no kit yet, or comes to another kit than the one that was kept
     */
    public static <T> Outcome<T> with(Book book, String name, BiFunction<Bench, OrderKit, Outcome<T>> work) {
        Outcome<OrderStanding> found = book.read(reading -> OrderDesk.standing(reading, name));
        return found.then(standing ->
                        standing.resolved().isEmpty() ? Outcome.faulty(noKit(standing)) : Outcome.sound(standing))
                .then(standing -> KeptBench.with(
                        book,
                        standing.catalogue(),
                        bench -> again(book, bench, standing).then(kit -> work.apply(bench, kit))));
    }

    private static Outcome<OrderKit> again(Book book, Bench bench, OrderStanding standing) {
        byte[] content = book.read(reading -> reading.contents().of(content(reading.orders(), standing)));
        return bench.order(standing.name(), content).then(keyed -> {
            Order named = book.read(reading -> KeyedOrder.named(keyed, reading.persons()));
            return again(bench, named, standing);
        });
    }

    /** Resolves an order again; faulty where it comes to another kit than the one that was kept, or to none. */
    static Outcome<OrderKit> again(Bench bench, Order order, OrderStanding standing) {
        return OrderKit.of(bench.resolver(), order, false).then(kit -> {
            Bill bill = kit.bill();
            boolean same = bill != null && Entry.sha256(Kitted.lines(bill)).equals(standing.resolved());
            return same ? Outcome.sound(kit) : Outcome.faulty(another(standing));
        });
    }

    /** Of an order whose draft was changed since, what was quoted. */
    private static String content(Orders orders, OrderStanding standing) {
        return standing.state().open()
                ? orders.quotations(standing.name())
                        .get(standing.version() - 1)
                        .stands()
                        .order()
                : standing.draft();
    }

    private static Fault noKit(OrderStanding standing) {
        return Fault.of(
                "order " + standing.name(),
                "'" + standing.state().written() + "'",
                "an order that was quoted",
                "'boltlore kit FILE' makes the sheets of an order that is no more than a draft.");
    }

    private static Fault another(OrderStanding standing) {
        return Fault.of(
                "order " + standing.name(),
                "another kit than the one that was kept",
                "the same kit from the same order and catalogue",
                "This Boltlore resolves it otherwise than the one that kept it: use that one for this order.");
    }
}
