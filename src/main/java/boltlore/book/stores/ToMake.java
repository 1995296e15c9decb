package boltlore.book.stores;

import boltlore.book.By;
import boltlore.book.Entry;
import boltlore.book.Held;
import boltlore.book.StockHappening;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.orders.Bench;
import boltlore.book.orders.FrozenKits;
import boltlore.book.stores.StoresDesk.Arrival;
import boltlore.catalogue.Part;
import boltlore.faults.Outcome;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the plan had still to make of what was made here.
 *
 * @param left how much, by part in its finish
 * @param entry the last one that it was worked out with
 */
record ToMake(Map<Held, BigDecimal> left, long entry) {

    /** Bare or in a finish, whatever the lot, the serial number and the bin. */
    static Held item(String part, String finish) {
        return new Held(part, finish, "", "", "");
    }

    /** Worked out before anything is written, and only where something was made here: it reads what all orders ask. */
    static Outcome<ToMake> of(Book book, By by, Bench bench, List<Arrival> arrivals, List<Part> parts) {
        List<Held> made = IntStream.range(0, parts.size())
                .filter(i -> GoodsIn.isMade(arrivals.get(i), parts.get(i)))
                .mapToObj(i -> item(arrivals.get(i).part(), arrivals.get(i).finish()))
                .distinct()
                .toList();
        return made.isEmpty()
                ? Outcome.sound(new ToMake(Map.of(), 0))
                : book.read(reading -> OwedPlan.of(
                                reading,
                                bench.catalogue(),
                                by.today(),
                                orders -> FrozenKits.in(reading, bench, by.today())
                                        .then(kits -> kits.of(orders)))
                        .then(plan -> {
                            Map<String, BigDecimal> all =
                                    plan.map(OwedPlan::toMake).orElseGet(TreeMap::new);
                            Map<Held, BigDecimal> left = made.stream()
                                    .collect(Collectors.toMap(
                                            item -> item,
                                            item -> all.getOrDefault(
                                                    Stock.key(item.part(), item.finish()), BigDecimal.ZERO)));
                            return Outcome.sound(new ToMake(
                                    left,
                                    reading.journal().last().map(Entry::number).orElse(0L)));
                        }));
    }

    /** Another desk may have taken some of it in while the plan was worked out. */
    Map<Held, BigDecimal> lessWhatCameSince(Reading reading) {
        Map<Held, BigDecimal> now = new HashMap<>(left);
        now.replaceAll((item, quantity) -> StoresDesk.ofPart(reading, item.part()).stream()
                .filter(each -> each.number() > entry)
                .flatMap(each -> StoresDesk.received(each.happening()).stream())
                .filter(each -> item(each.held().part(), each.held().finish()).equals(item))
                .map(StockHappening.Received::quantity)
                .reduce(quantity, BigDecimal::subtract)
                .max(BigDecimal.ZERO));
        return now;
    }
}
