package boltlore.bill;

import boltlore.measure.PartNumber;
import boltlore.order.Order;
import boltlore.resolution.Resolution;
import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The bill of one order's kit.
 *
 * @param items of level 1 in the order of the family's positions, each followed by what it needs
 */
public record Bill(Order order, Resolution.Resolved resolved, List<Item> items) {

    /** All items of all levels in printing order. */
    public Stream<Item> all() {
        return items.stream().flatMap(Item::all);
    }

    /** What stores hand out and what ships, at the level they hand it out. */
    public Stream<Item> picked() {
        return all().filter(Item::picked);
    }

    /** What of the base vehicle goes back in. */
    public Stream<Item> reused() {
        return all().filter(item -> item.part().reused());
    }

    /** What is coated for this kit, each at the level that it is coated at. */
    public Stream<Item> coated() {
        return all().filter(Item::coated);
    }

    /** Quantities of all parts of all levels, summed over their places. */
    public SortedMap<PartNumber, BigDecimal> quantities() {
        SortedMap<PartNumber, BigDecimal> sums = new TreeMap<>();
        all().forEach(item -> sums.merge(item.part().number(), item.quantity(), BigDecimal::add));
        return sums;
    }
}
