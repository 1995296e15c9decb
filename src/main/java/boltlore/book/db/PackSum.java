package boltlore.book.db;

import boltlore.book.ChangeHappening;
import boltlore.book.ChangeState;
import boltlore.book.Happening;
import boltlore.book.PackHappening;
import boltlore.book.ShopHappening;
import boltlore.book.StockHappening;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Kits that are picked, counted and packed; whatever comes in or goes out afterwards makes them not so any more. */
final class PackSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of("picked_order order_name", "packed_order order_name", "bag_count order_name bag part finish");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof ShopHappening.Picked picked) {
            handle.execute(
                    "insert into picked_order (order_name, entry, still_open) values (?, ?, ?)"
                            + " on conflict (order_name) do update set entry = excluded.entry,"
                            + " still_open = excluded.still_open",
                    picked.order(),
                    entry,
                    String.join("\n", picked.open()));
        } else if (happening instanceof PackHappening.Packed packed) {
            handle.execute(
                    "insert into packed_order (order_name, crates, mass_kg, entry) values (?, ?, ?, ?)"
                            + " on conflict (order_name) do update set crates = excluded.crates,"
                            + " mass_kg = excluded.mass_kg, entry = excluded.entry",
                    packed.order(),
                    packed.crates(),
                    packed.massKg() == null ? "" : StockSum.plain(packed.massKg()),
                    entry);
        } else if (happening instanceof PackHappening.BagCounted counted) {
            counted(handle, entry, counted);
        } else {
            opened(handle, happening);
        }
    }

    private static void counted(Handle handle, long entry, PackHappening.BagCounted counted) {
        handle.execute(
                "insert into bag_count (order_name, bag, part, finish, wanted, counted, entry)"
                        + " values (?, ?, ?, ?, ?, ?, ?) on conflict (order_name, bag, part, finish) do update set"
                        + " wanted = excluded.wanted, counted = excluded.counted, entry = excluded.entry",
                counted.order(),
                counted.bag(),
                counted.part(),
                counted.finish(),
                StockSum.plain(counted.wanted()),
                StockSum.plain(counted.counted()),
                entry);
    }

    /** What is taken out of a kit, put into it, or changed in it after it was called complete must be looked at again. */
    private static void opened(Handle handle, Happening happening) {
        if (happening instanceof StockHappening.Issued issued) {
            open(handle, issued.order());
        } else if (happening instanceof StockHappening.Returned returned) {
            open(handle, returned.order());
        } else if (happening instanceof ShopHappening.FoundShort missing
                && missing.missing().signum() > 0) {
            open(handle, missing.order());
        } else if (happening instanceof ChangeHappening.Decided decided && decided.state() == ChangeState.ACCEPTED) {
            open(handle, decided.order());
        }
    }

    private static void open(Handle handle, String order) {
        handle.execute("delete from picked_order where order_name = ?", order);
        handle.execute("delete from packed_order where order_name = ?", order);
    }
}
