package boltlore.book.stores;

import boltlore.book.By;
import boltlore.book.PackHappening.BagCounted;
import boltlore.book.PackHappening.Packed;
import boltlore.book.db.Book;
import boltlore.book.db.Reading;
import boltlore.book.db.Stock;
import boltlore.book.db.Writing;
import boltlore.book.db.Written;
import boltlore.faults.Fault;
import boltlore.faults.Outcome;
import boltlore.measure.PartNumber;
import boltlore.trades.KitInWork;
import boltlore.trades.picking.BagPage;
import boltlore.trades.picking.BagRow;
import boltlore.trades.picking.PickingTrade;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The second count of a picked kit, bag by bag, and its way into the crates. */
public final class PackDesk {

    private final Book book;
    private final By by;

    public PackDesk(Book book, By by) {
        this.book = book;
        this.by = by;
    }

    /**
     * What lies in a bag.
     *
     * @param bag its name; of what is packed loose, that of the fit stage
     * @param wanted with spares
     * @param counted what was counted last, or null where nobody has counted it, or the kit asks for another number since
     */
    public record InBag(
            String bag,
            String part,
            String finish,
            String unit,
            BigDecimal wanted,
            @Nullable BigDecimal counted) {

        public boolean right() {
            return counted != null && counted.compareTo(wanted) == 0;
        }

        String key() {
            return bag + "\n" + Stock.key(part, finish);
        }
    }

    /** Of each bag what lies in it, with what was counted. */
    public static List<InBag> bags(Reading reading, KitInWork kit) {
        Map<String, BagCounted> counts = reading.packing().counts(kit.order().name()).stream()
                .collect(Collectors.toMap(
                        count -> count.bag() + "\n" + Stock.key(count.part(), count.finish()), count -> count));
        Map<String, InBag> bags = new TreeMap<>();
        for (BagPage page : PickingTrade.list(kit).bags()) {
            for (BagRow row : page.rows()) {
                InBag one = new InBag(
                        row.bag().isEmpty() ? page.stage() : row.bag(),
                        row.part().number().text(),
                        row.finish(),
                        row.part().unit(),
                        row.quantity().add(row.spares()),
                        null);
                bags.merge(one.key(), one, PackDesk::together);
            }
        }
        return bags.values().stream()
                .map(one -> counted(one, counts.get(one.key())))
                .toList();
    }

    private static InBag together(InBag one, InBag other) {
        return new InBag(
                one.bag(), one.part(), one.finish(), one.unit(), one.wanted().add(other.wanted()), null);
    }

    private static InBag counted(InBag one, @Nullable BagCounted count) {
        if (count == null || count.wanted().compareTo(one.wanted()) != 0) {
            return one;
        }
        return new InBag(one.bag(), one.part(), one.finish(), one.unit(), one.wanted(), count.counted());
    }

    /** So much of a part was counted in a bag. */
    public record Count(String bag, String part, String finish, BigDecimal counted) {}

    /** Keeps counts, all of them or none, whether they are right or not: a wrong one holds the kit until it is counted again. */
    public Outcome<Written<List<InBag>>> count(KitInWork kit, List<Count> counts, String reason) {
        return book.write(by, writing -> {
            Map<String, InBag> bags = bags(writing, kit).stream()
                    .collect(Collectors.toMap(InBag::key, one -> one, (a, b) -> a, TreeMap::new));
            return PickDesk.owed(writing, kit)
                    .then(owed -> Outcome.all(counts.stream()
                            .map(count -> count(writing, kit, bags, count, reason))
                            .toList()));
        });
    }

    private static Outcome<InBag> count(
            Writing writing, KitInWork kit, Map<String, InBag> bags, Count count, String reason) {
        InBag bag = bags.get(count.bag() + "\n" + Stock.key(count.part(), count.finish()));
        if (bag == null) {
            String where = bags.values().stream()
                    .filter(one -> one.part().equals(count.part()))
                    .map(one -> one.bag() + ": " + Stock.key(one.part(), one.finish()))
                    .collect(Collectors.joining("; "));
            return Outcome.faulty(Fault.of(
                    "order " + kit.order().name(),
                    "bag '" + count.bag() + "' with " + Stock.key(count.part(), count.finish()),
                    where.isEmpty() ? "a part of its bags" : where,
                    "'boltlore pick bags " + kit.order().name() + "' lists them."));
        }
        List<Fault> parts = StoresDesk.whole(kit.catalogue().part(new PartNumber(bag.part())), count.counted())
                .faults();
        if (!parts.isEmpty()) {
            return Outcome.faulty(parts);
        }
        writing.add(
                new BagCounted(kit.order().name(), bag.bag(), bag.part(), bag.finish(), bag.wanted(), count.counted()),
                reason);
        return Outcome.sound(new InBag(bag.bag(), bag.part(), bag.finish(), bag.unit(), bag.wanted(), count.counted()));
    }

    /**
     * Says that a kit lies in its crates, as many as are planned and about as heavy.
     *
     * @param massKg gross mass of all of them, or null
     */
    public Outcome<Written<Packed>> pack(KitInWork kit, int crates, @Nullable BigDecimal massKg, String reason) {
        String order = kit.order().name();
        List<Fault> faults = CratesJudged.of(kit).faults(crates, massKg, reason);
        return book.write(
                by,
                writing -> PickDesk.owed(writing, kit).then(owed -> {
                    if (writing.packing().picked(order).isEmpty()) {
                        return Outcome.faulty(Fault.of(
                                "order " + order,
                                "a kit whose picking nobody has called complete since it was last changed",
                                "one that is picked",
                                "'boltlore pick complete " + order + "' calls it complete."));
                    }
                    if (!faults.isEmpty()) {
                        return Outcome.faulty(faults);
                    }
                    Packed packed = new Packed(order, crates, massKg);
                    writing.add(packed, reason);
                    return Outcome.sound(packed);
                }));
    }
}
