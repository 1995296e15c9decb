package boltlore.book.db;

import boltlore.book.ChangeState;
import boltlore.book.KitDifference;
import boltlore.book.OrderChange;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** Changes of frozen orders, and the work that was done before them. */
public final class Changes {

    private static final String SELECT =
            "select c.*, j.reason from order_change c join journal j on j.number = c.entry";

    private final Handle handle;

    Changes(Handle handle) {
        this.handle = handle;
    }

    /** All of one order by number. */
    public List<OrderChange> of(String order) {
        return handle.createQuery(SELECT + " where c.order_name = ? order by c.number")
                .bind(0, order)
                .map((row, context) -> change(row))
                .list();
    }

    /** All orders' changes in one state. */
    public List<OrderChange> in(ChangeState state) {
        return handle.createQuery(SELECT + " where c.state = ? order by c.order_name, c.number")
                .bind(0, state.written())
                .map((row, context) -> change(row))
                .list();
    }

    public Optional<OrderChange> find(String order, int number) {
        return handle.createQuery(SELECT + " where c.order_name = ? and c.number = ?")
                .bind(0, order)
                .bind(1, number)
                .map((row, context) -> change(row))
                .findOne();
    }

    /** What of an order was bought, cut, coated and picked: quantity by stage of each piece. */
    public Map<KitDifference.Piece, SortedMap<String, BigDecimal>> workOn(String order) {
        Map<KitDifference.Piece, SortedMap<String, BigDecimal>> work = new TreeMap<>();
        handle.createQuery("select * from order_work where order_name = ?")
                .bind(0, order)
                .map((row, context) -> work.computeIfAbsent(
                                new KitDifference.Piece(
                                        row.getString("part"), row.getString("revision"), row.getString("finish")),
                                piece -> new TreeMap<>())
                        .put(row.getString("stage"), new BigDecimal(row.getString("quantity"))))
                .list();
        return work;
    }

    private static OrderChange change(ResultSet row) throws SQLException {
        String state = row.getString("state");
        return new OrderChange(
                row.getString("order_name"),
                row.getInt("number"),
                row.getLong("entry"),
                row.getString("asker"),
                Arrays.stream(ChangeState.values())
                        .filter(each -> each.written().equals(state))
                        .findFirst()
                        .orElseThrow(),
                row.getString("from_kit"),
                Orders.frozen(row),
                row.getString("currency"),
                new BigDecimal(row.getString("net")),
                row.getInt("lead_days"),
                row.getString("reason"));
    }
}
