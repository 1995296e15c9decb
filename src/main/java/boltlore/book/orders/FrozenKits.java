package boltlore.book.orders;

import boltlore.answers.OrderKit;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.db.Reading;
import boltlore.catalogue.Catalogue;
import boltlore.catalogue.Part;
import boltlore.catalogue.json.CatalogueReader;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.order.OrderBuilder;
import boltlore.trades.KitInWork;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Kits of orders as they were frozen: by the catalogue that the book has kept with each, whatever the catalogue says now. One
 * that the present catalogue is the same as is not read again.
 */
public final class FrozenKits {

    private static final int MOST = 100_000;

    private final Reading reading;
    private final Bench present;
    private final LocalDate today;
    private final Map<String, Bench> benches = new HashMap<>();

    private FrozenKits(Reading reading, Bench present, LocalDate today) {
        this.reading = reading;
        this.present = present;
        this.today = today;
    }

    /** Kits out of a book. */
    public static Outcome<FrozenKits> in(Reading reading, Bench present, LocalDate today) {
        return KeptCatalogue.of(present.folder(), present.catalogue()).then(kept -> {
            FrozenKits kits = new FrozenKits(reading, present, today);
            kits.benches.put(kept.hash(), present);
            return Outcome.sound(kits);
        });
    }

    public Catalogue catalogue() {
        return present.catalogue();
    }

    /** Of all orders that the workshop owes, by when they are due. */
    public Outcome<List<KitInWork>> owed() {
        List<OrderState> owed = OrderState.ALL.stream().filter(OrderState::owed).toList();
        return Outcome.all(
                reading.orders().in(owed, MOST).stream().map(this::of).toList());
    }

    /** Of these orders, in their order; faulty for one that is not frozen. */
    public Outcome<List<KitInWork>> of(List<String> orders) {
        return Outcome.all(orders.stream()
                .map(order -> OrderDesk.standing(reading, order).then(this::of))
                .toList());
    }

    /** With the names of persons again, and the day that was agreed. */
    public Outcome<KitInWork> of(OrderStanding standing) {
        if (!standing.state().frozen()) {
            return Outcome.faulty(Fault.of(
                    "order " + standing.name(),
                    "'" + standing.state().written() + "'",
                    "an order whose kit is frozen, because its customer has ordered what was quoted",
                    "'boltlore order confirm " + standing.name() + "' freezes it as it was quoted."));
        }
        return bench(standing.catalogue())
                .then(bench -> bench.order(standing.name(), reading.contents().of(standing.draft()))
                        .then(order -> kit(bench, named(order, standing), standing)));
    }

    private Order named(Order keyed, OrderStanding standing) {
        OrderBuilder order = new OrderBuilder(KeyedOrder.named(keyed, reading.persons()));
        return standing.due().isEmpty()
                ? order.build()
                : order.due(LocalDate.parse(standing.due())).build();
    }

    private Outcome<KitInWork> kit(Bench bench, Order order, OrderStanding standing) {
        return FrozenKit.again(bench, order, standing).then(kit -> {
            KitInWork inWork = new KitInWork(
                            bench.resolver().resolver().plan(order.family()), Objects.requireNonNull(kit.bill()), today)
                    .beside(OrderKit.beside(bench.resolver(), order))
                    .version(Math.max(1, standing.version()));
            Map<PartNumber, Part> parts = new HashMap<>(present.catalogue().parts());
            parts.putAll(bench.catalogue().parts());
            inWork.once(PartsToday.class, any -> new PartsToday(parts));
            return Outcome.sound(inWork);
        });
    }

    private Outcome<Bench> bench(String hash) {
        Bench known = benches.get(hash);
        if (known != null) {
            return Outcome.sound(known);
        }
        return KeptBench.laidOut(folder -> KeptCatalogue.lay(reading.contents(), hash, folder), CatalogueReader::read)
                .then(catalogue -> {
                    Bench read = Bench.of(catalogue, present.folder());
                    benches.put(hash, read);
                    return Outcome.sound(read);
                });
    }
}
