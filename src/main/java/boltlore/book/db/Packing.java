package boltlore.book.db;

import boltlore.book.PackHappening.BagCounted;
import boltlore.book.PackHappening.Packed;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Which kits are picked, counted and packed. */
public final class Packing {

    private final Handle handle;

    Packing(Handle handle) {
        this.handle = handle;
    }

    /** What was still to come when the picking was called complete, if it was and nothing has changed since. */
    public Optional<List<String>> picked(String order) {
        return handle.createQuery("select still_open from picked_order where order_name = ?")
                .bind(0, order)
                .mapTo(String.class)
                .findOne()
                .map(open -> Arrays.stream(open.split("\n", -1))
                        .filter(key -> !key.isEmpty())
                        .toList());
    }

    /** The kit in its crates, if it is and nothing has changed since. */
    public Optional<Packed> packed(String order) {
        return handle.createQuery("select * from packed_order where order_name = ?")
                .bind(0, order)
                .map((row, context) -> new Packed(
                        order,
                        row.getInt("crates"),
                        row.getString("mass_kg").isEmpty() ? null : new BigDecimal(row.getString("mass_kg"))))
                .findOne();
    }

    /** What was counted in its bags last. */
    public List<BagCounted> counts(String order) {
        return handle.createQuery("select * from bag_count where order_name = ? order by bag, part, finish")
                .bind(0, order)
                .map((row, context) -> new BagCounted(
                        order,
                        row.getString("bag"),
                        row.getString("part"),
                        row.getString("finish"),
                        new BigDecimal(row.getString("wanted")),
                        new BigDecimal(row.getString("counted"))))
                .list();
    }
}
