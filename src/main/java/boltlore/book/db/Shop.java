package boltlore.book.db;

import boltlore.book.OrderState;
import boltlore.book.ShopHappening.Coat;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** What the rooms have done. */
public final class Shop {

    private final Handle handle;

    Shop(Handle handle) {
        this.handle = handle;
    }

    /**
     * A piece in the coating shop.
     *
     * @param again how often it was coated again
     */
    public record Piece(
            String piece, String order, String part, String finish, Coat state, String load, int again, long entry) {}

    /** A rest of a bar; used by nobody where it lies on the rack. */
    public record Rest(
            String remnant, String material, BigDecimal lengthMm, String heat, String leftBy, String usedBy) {}

    /** A record that was judged. */
    public record KeptRecord(
            String order, long entry, String of, String content, boolean passed, List<String> findings) {}

    /**
     * Pieces by finish, of each those first whose orders are due first, then by their name; all states where none is named, all
     * orders where none is.
     */
    public List<Piece> pieces(List<Coat> states, String order) {
        List<Coat> asked = states.isEmpty() ? List.of(Coat.values()) : states;
        // Either condition by itself, for which there is an index; none serves both.
        String ofOrder = order.isEmpty() ? "'' = :order" : "p.order_name = :order";
        return handle.createQuery("select p.* from coat_piece p join customer_order o on o.name = p.order_name"
                        + " where p.state in (<states>) and <ofOrder> order by p.finish,"
                        + " case when o.due = '' then 1 else 0 end, o.due, p.order_name, p.part, p.piece")
                .bindList("states", asked.stream().map(Coat::written).toList())
                .define("ofOrder", ofOrder)
                .bind("order", order)
                .map((row, context) -> piece(row))
                .list();
    }

    /** Pieces in these states, those first whose orders are due first; at most so many. */
    public List<Piece> queue(List<Coat> states, int most) {
        return handle.createQuery(
                        "select p.* from coat_piece p join customer_order o on o.name = p.order_name"
                                + " where p.state in (<states>)"
                                + " order by case when o.due = '' then 1 else 0 end, o.due, p.order_name, p.finish, p.piece limit :most")
                .bindList("states", states.stream().map(Coat::written).toList())
                .bind("most", most)
                .map((row, context) -> piece(row))
                .list();
    }

    /** How many pieces stand where, by finish; none that nothing is to be done with. */
    public SortedMap<String, Map<Coat, Integer>> counts() {
        SortedMap<String, Map<Coat, Integer>> counts = new TreeMap<>();
        handle.createQuery("select finish, state, count(*) from coat_piece where state in (<states>)"
                        + " group by finish, state")
                .bindList(
                        "states",
                        Arrays.stream(Coat.values())
                                .filter(state -> !state.done())
                                .map(Coat::written)
                                .toList())
                .map((row, context) -> counts.computeIfAbsent(row.getString(1), any -> new TreeMap<>())
                        .put(Coat.valueOf(row.getString(2).toUpperCase(Locale.ROOT)), row.getInt(3)))
                .list();
        return counts;
    }

    /** Pieces of a part in these states, whichever order they are for. */
    public List<Piece> ofPart(String part, List<Coat> states) {
        return handle.createQuery(
                        "select * from coat_piece where state in (<states>) and part = :part order by load, piece")
                .bindList("states", states.stream().map(Coat::written).toList())
                .bind("part", part)
                .map((row, context) -> piece(row))
                .list();
    }

    public Optional<Piece> piece(String piece) {
        return handle.createQuery("select * from coat_piece where piece = ?")
                .bind(0, piece)
                .map((row, context) -> piece(row))
                .findOne();
    }

    private static Piece piece(ResultSet row) throws SQLException {
        String state = row.getString("state").toUpperCase(Locale.ROOT);
        return new Piece(
                row.getString("piece"),
                row.getString("order_name"),
                row.getString("part"),
                row.getString("finish"),
                Coat.valueOf(state),
                row.getString("load"),
                row.getInt("again"),
                row.getLong("entry"));
    }

    /** Remnants on the rack, and where they are asked for too those that were used up, by material and length. */
    public List<Rest> rests(boolean usedToo) {
        return handle.createQuery("select * from remnant" + (usedToo ? "" : " where used_by = ''")
                        + " order by material, remnant")
                .map((row, context) -> new Rest(
                        row.getString("remnant"),
                        row.getString("material"),
                        new BigDecimal(row.getString("length_mm")),
                        row.getString("heat"),
                        row.getString("left_by"),
                        row.getString("used_by")))
                .list();
    }

    /** The last record of each order in these states, where it is not passed. */
    public List<KeptRecord> lastNotPassed(List<OrderState> states) {
        return records(handle.createQuery(
                        "select r.* from judged_record r join customer_order o on o.name = r.order_name"
                                + " where o.state in (<states>) and r.passed = 0 and r.entry = (select max(l.entry)"
                                + " from judged_record l where l.order_name = r.order_name) order by r.order_name")
                .bindList("states", states.stream().map(OrderState::written).toList()));
    }

    /** Records of an order, the first one first; the last of a kind is the one that counts. */
    public List<KeptRecord> records(String order) {
        return records(handle.createQuery("select * from judged_record where order_name = ? order by entry")
                .bind(0, order));
    }

    private static List<KeptRecord> records(Query query) {
        return query.map((row, context) -> new KeptRecord(
                        row.getString("order_name"),
                        row.getLong("entry"),
                        row.getString("of_what"),
                        row.getString("content"),
                        row.getInt("passed") == 1,
                        Arrays.stream(row.getString("findings").split("\n", -1))
                                .filter(finding -> !finding.isEmpty())
                                .toList()))
                .list();
    }
}
