package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.book.Happening;
import boltlore.faults.Outcome;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** All sums; a new one is a line here. */
final class Sums {

    static final List<Sum> ALL = List.of(
            new OrderSum(),
            new KitSum(),
            new ChangeSum(),
            new BuiltSum(),
            new StockSum(),
            new PurchaseSum(),
            new ShopSum(),
            new PackSum(),
            // They look at what the others have made of the same entry.
            new NeedSum());

    private Sums() {}

    static void take(Handle handle, Entry entry, Happening happening) {
        ALL.forEach(sum -> sum.take(handle, entry.number(), happening));
    }

    /** Adds an entry that was read; faulty where this program does not know what it says. */
    static Outcome<Happening> take(Handle handle, Entry entry) {
        return entry.happening().then(happening -> {
            take(handle, entry, happening);
            return Outcome.sound(happening);
        });
    }

    /** Every table of every sum, each with the columns of its key. */
    static List<String> tables() {
        return ALL.stream().flatMap(sum -> sum.tables().stream()).toList();
    }
}
