package boltlore.book.db;

import boltlore.book.Entry;
import boltlore.book.Frozen;
import boltlore.book.KitLine;
import boltlore.book.KitLines;
import boltlore.book.Offer;
import boltlore.book.OrderHappening;
import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.QuotedVersion;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** Orders as they stand. */
public final class Orders {

    private final Handle handle;

    Orders(Handle handle) {
        this.handle = handle;
    }

    public Optional<OrderStanding> find(String name) {
        return handle.createQuery("select * from customer_order where name = ?")
                .bind(0, name)
                .map((row, context) -> standing(row))
                .findOne();
    }

    /** The number of an order that differs from this one by small and capital letters alone. */
    public Optional<String> alike(String name) {
        return handle.createQuery("select name from customer_order where lower(name) = lower(?) and name <> ?")
                .bind(0, name)
                .bind(1, name)
                .mapTo(String.class)
                .findFirst();
    }

    /** Those in these states, first what is due first, then by name; what has no due day comes last. */
    public List<OrderStanding> in(List<OrderState> states, int most) {
        return handle.createQuery("select * from customer_order where state in (<states>)"
                        + " order by case when due = '' then 1 else 0 end, due, name limit :most")
                .bindList("states", states.stream().map(OrderState::written).toList())
                .bind("most", most)
                .map((row, context) -> standing(row))
                .list();
    }

    /** The longest number, and of equally long ones the last: where orders are counted, the newest; empty before the first. */
    public String highest() {
        return handle.createQuery("select name from customer_order order by length(name) desc, name desc limit 1")
                .mapTo(String.class)
                .findOne()
                .orElse("");
    }

    /** All of a customer, by number. */
    public List<OrderStanding> ofCustomer(String key) {
        return handle.createQuery("select * from customer_order where customer = ? order by name")
                .bind(0, key)
                .map((row, context) -> standing(row))
                .list();
    }

    /** How many orders are in each state. */
    public SortedMap<OrderState, Long> counts() {
        SortedMap<OrderState, Long> counts = new TreeMap<>();
        handle.createQuery("select state, count(*) from customer_order group by state")
                .map((row, context) -> counts.put(state(row.getString(1)), row.getLong(2)))
                .list();
        return counts;
    }

    /** All versions, the first one first. */
    public List<QuotedVersion> quotations(String name) {
        return handle.createQuery("select * from quotation where order_name = ? order by version")
                .bind(0, name)
                .map((row, context) -> quoted(row))
                .list();
    }

    public SortedMap<String, String> choices(String name) {
        SortedMap<String, String> choices = new TreeMap<>();
        handle.createQuery("select option_name, option_value from order_choice where order_name = ?")
                .bind(0, name)
                .map((row, context) -> choices.put(row.getString(1), row.getString(2)))
                .list();
        return choices;
    }

    /**
     * An order as it was confirmed.
     *
     * @param net price before tax, in the currency of its quotation
     * @param cost hash of the content that was kept with the quotation, as are the figures
     */
    public record Confirmed(String order, String family, BigDecimal net, String cost, String figures) {}

    /** Orders that were confirmed at an instant or later, by their entries; one that was given up since too. */
    public List<Confirmed> confirmedSince(Instant from) {
        return handle.createQuery("select o.name, o.family, q.net, q.cost, q.figures from journal j"
                        + " join customer_order o on o.name = j.name"
                        + " join quotation q on q.order_name = o.name and q.version = o.confirmed"
                        + " where j.kind = ? and j.at >= ? order by j.number")
                .bind(0, OrderHappening.Ordered.KIND)
                .bind(1, Entry.written(from))
                .map((row, context) -> new Confirmed(
                        row.getString(1),
                        row.getString(2),
                        new BigDecimal(row.getString(3)),
                        row.getString(4),
                        row.getString(5)))
                .list();
    }

    /** Hash of the catalogue that was quoted from last. */
    public Optional<String> newestCatalogue() {
        return handle.createQuery("select catalogue from quotation order by entry desc limit 1")
                .mapTo(String.class)
                .findOne();
    }

    /** The kit's lines as they were resolved. */
    public List<KitLine> lines(String kit) {
        return KitLines.read(kit, new Contents(handle).of(kit));
    }

    /** Hashes of the sheets that were issued last, by name. */
    public SortedMap<String, String> issued(String name) {
        SortedMap<String, String> sheets = new TreeMap<>();
        handle.createQuery("select sheet, hash from issued_sheet where order_name = :name and entry ="
                        + " (select max(entry) from issued_sheet where order_name = :name)")
                .bind("name", name)
                .map((row, context) -> sheets.put(row.getString(1), row.getString(2)))
                .list();
        return sheets;
    }

    static OrderState state(String written) {
        return OrderState.ALL.stream()
                .filter(state -> state.written().equals(written))
                .findFirst()
                .orElseThrow();
    }

    static OrderStanding standing(ResultSet row) throws SQLException {
        return new OrderStanding(
                row.getString("name"),
                row.getString("family"),
                state(row.getString("state")),
                row.getString("customer"),
                row.getString("partner"),
                row.getString("due"),
                row.getString("draft"),
                row.getInt("version"),
                row.getInt("confirmed"),
                row.getString("kit"),
                row.getString("resolved"),
                row.getString("catalogue"));
    }

    private static QuotedVersion quoted(ResultSet row) throws SQLException {
        return new QuotedVersion(
                row.getString("order_name"),
                row.getInt("version"),
                row.getLong("entry"),
                new Offer(
                        LocalDate.parse(row.getString("quoted_on")),
                        LocalDate.parse(row.getString("valid_until")),
                        row.getString("currency"),
                        new BigDecimal(row.getString("net")),
                        new BigDecimal(row.getString("total")),
                        row.getInt("lead_days")),
                frozen(row));
    }

    static Frozen frozen(ResultSet row) throws SQLException {
        return new Frozen(
                row.getString("content"),
                row.getString("kit"),
                row.getString("catalogue"),
                row.getString("figures"),
                row.getString("cost"),
                row.getString("findings"),
                row.getString("needs"));
    }
}
