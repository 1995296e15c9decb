package boltlore.book.orders;

import boltlore.book.OrderStanding;
import boltlore.book.db.Reading;
import boltlore.faults.Outcome;
import boltlore.trades.KitInWork;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Frozen kits that were asked for lately, so that each page of a room need not resolve them anew. Several rooms may ask at
 * once. A kit is kept for the order just as it stands, its customer's name included: what was changed or erased since is
 * resolved again.
 */
public final class KitsAtHand {

    private static final int MOST_KITS = 64;

    private final Bench present;
    private final Map<Key, KitInWork> kits = new LinkedHashMap<>(MOST_KITS, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, KitInWork> eldest) {
            return size() > MOST_KITS;
        }
    };

    /** @param present the catalogue as it is now */
    public KitsAtHand(Bench present) {
        this.present = present;
    }

    private record Key(OrderStanding order, String customer, String partner, LocalDate today) {}

    /** Of one order; faulty where it is none, or not frozen. */
    public Outcome<KitInWork> of(Reading reading, String order, LocalDate today) {
        return of(reading, List.of(order), today).then(all -> Outcome.sound(all.get(0)));
    }

    /** Of these orders, in their order. */
    public Outcome<List<KitInWork>> of(Reading reading, List<String> orders, LocalDate today) {
        return Outcome.all(orders.stream()
                        .map(order -> OrderDesk.standing(reading, order))
                        .toList())
                .then(standings -> standing(reading, standings, today));
    }

    /** Of these orders, in their order; all of so many as are kept at hand are resolved once. */
    public Outcome<List<KitInWork>> ofAll(Reading reading, List<OrderStanding> orders, LocalDate today) {
        return standing(reading, orders, today);
    }

    private Outcome<List<KitInWork>> standing(Reading reading, List<OrderStanding> orders, LocalDate today) {
        List<OrderStanding> missing = orders.stream()
                .filter(order -> known(key(reading, order, today)) == null)
                .toList();
        Outcome<Integer> resolved = missing.isEmpty() ? Outcome.sound(0) : resolve(reading, missing, today);
        return resolved.then(count -> {
            List<Outcome<KitInWork>> all = new ArrayList<>();
            for (OrderStanding order : orders) {
                KitInWork kit = known(key(reading, order, today));
                // Of more orders than are kept at hand the first ones may have gone again.
                all.add(
                        kit != null
                                ? Outcome.sound(kit)
                                : FrozenKits.in(reading, present, today).then(frozen -> frozen.of(order)));
            }
            return Outcome.all(all);
        });
    }

    private Outcome<Integer> resolve(Reading reading, List<OrderStanding> orders, LocalDate today) {
        return FrozenKits.in(reading, present, today)
                .then(frozen -> Outcome.all(orders.stream()
                        .map(order -> frozen.of(order).then(kit -> {
                            keep(key(reading, order, today), kit);
                            return Outcome.sound(kit);
                        }))
                        .toList()))
                .then(all -> Outcome.sound(all.size()));
    }

    private static Key key(Reading reading, OrderStanding order, LocalDate today) {
        return new Key(
                order,
                reading.persons().shown(order.customer()),
                order.partner().isEmpty() ? "" : reading.persons().shown(order.partner()),
                today);
    }

    private synchronized @Nullable KitInWork known(Key key) {
        return kits.get(key);
    }

    private synchronized void keep(Key key, KitInWork kit) {
        kits.put(key, kit);
    }
}
