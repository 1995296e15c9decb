package boltlore.trades.costing.path;

import boltlore.bill.Bill;
import boltlore.bill.Item;
import boltlore.catalogue.Catalogue;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;

/**
 * When everything of one kit must be on its way: all times and dates that are told of an order come from this one network
 * of its steps.
 */
public final class KitTimes {

    private final LeadPath path;
    private final IdentityHashMap<Item, Timing> items;
    private final List<TimedExtra> extras;

    KitTimes(LeadPath path, IdentityHashMap<Item, Timing> items, List<TimedExtra> extras) {
        this.path = path;
        this.items = items;
        this.extras = List.copyOf(extras);
    }

    public static KitTimes of(Bill bill, Catalogue catalogue) {
        return KitNetwork.times(bill, catalogue);
    }

    public LeadPath path() {
        return path;
    }

    /** Of an item of the bill that nothing bought holds: the latest times that do not move the day of shipping. */
    public Timing of(Item item) {
        return Objects.requireNonNull(items.get(item), "inside what is bought");
    }

    /** All parts of extras that the workshop supplies, nothing inside what is bought. */
    public List<TimedExtra> extras() {
        return extras;
    }
}
