package boltlore.book.db;

import boltlore.book.Held;
import boltlore.book.PurchaseStanding;
import boltlore.book.PurchaseStanding.LineStanding;
import boltlore.book.StockHappening;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** What lies in the stores, what is kept, what went out, what is on its way. */
public final class Stock {

    private final Handle handle;

    Stock(Handle handle) {
        this.handle = handle;
    }

    /** So much of one held thing. */
    public record Row(Held held, BigDecimal quantity) {}

    /** So much is kept for an order. */
    public record Reservation(String order, String part, String finish, BigDecimal quantity) {}

    static BigDecimal lying(Handle handle, Held held) {
        return handle.createQuery(
                        "select quantity from stock where part = ? and finish = ? and lot = ? and serial = ? and bin = ?")
                .bind(0, held.part())
                .bind(1, held.finish())
                .bind(2, held.lot())
                .bind(3, held.serial())
                .bind(4, held.bin())
                .mapTo(String.class)
                .findOne()
                .map(BigDecimal::new)
                .orElse(BigDecimal.ZERO);
    }

    /** How much lies there just so. */
    public BigDecimal lying(Held held) {
        return lying(handle, held);
    }

    /** All that lies there, by part; of each the earliest lot first. */
    public List<Row> all() {
        return rows(handle.createQuery("select * from stock order by part, finish, lot, serial, bin"));
    }

    public List<Row> of(String part) {
        return rows(handle.createQuery("select * from stock where part = ? order by finish, lot, serial, bin")
                .bind(0, part));
    }

    private static List<Row> rows(Query query) {
        return query.map((row, context) -> new Row(held(row), new BigDecimal(row.getString("quantity"))))
                .list();
    }

    private static Held held(ResultSet row) throws SQLException {
        return new Held(
                row.getString("part"),
                row.getString("finish"),
                row.getString("lot"),
                row.getString("serial"),
                row.getString("bin"));
    }

    public List<Reservation> reservations() {
        return handle.createQuery("select * from reservation order by part, finish, order_name")
                .map((row, context) -> new Reservation(
                        row.getString("order_name"),
                        row.getString("part"),
                        row.getString("finish"),
                        new BigDecimal(row.getString("quantity"))))
                .list();
    }

    /** What an order has got and not given back, in the order in which it went out. */
    public List<StockHappening.Issued> issuedTo(String order) {
        return handle.createQuery(
                        "select * from issued_part where order_name = ? order by entry, part, finish, lot, serial, bin")
                .bind(0, order)
                .map((row, context) -> new StockHappening.Issued(
                        held(row),
                        new BigDecimal(row.getString("quantity")),
                        row.getString("order_name"),
                        row.getString("instead"),
                        row.getString("concession")))
                .list();
    }

    /** Serial numbers of all pieces of a part that ever came in, by the same in small letters. */
    public Map<String, String> serials(String part) {
        Map<String, String> serials = new HashMap<>();
        handle.createQuery("select serial from received_serial where part = ?")
                .bind(0, part)
                .mapTo(String.class)
                .forEach(serial -> serials.put(serial.toLowerCase(Locale.ROOT), serial));
        return serials;
    }

    /** Purchase orders of which something is still to come, by supplier; all of them where closed ones are asked for too. */
    public List<PurchaseStanding> purchases(boolean closedToo) {
        String where = closedToo ? "" : " where p.state = 'open'";
        Map<String, List<LineStanding>> lines = new HashMap<>();
        handle.createQuery("select l.* from purchase_line l join purchase p on p.purchase = l.purchase" + where
                        + " order by l.purchase, l.line")
                .map((row, context) -> lines.computeIfAbsent(row.getString("purchase"), any -> new ArrayList<>())
                        .add(line(row)))
                .list();
        return handle.createQuery("select * from purchase p" + where + " order by p.supplier, p.purchase")
                .map((row, context) -> purchase(row, lines.getOrDefault(row.getString("purchase"), List.of())))
                .list();
    }

    /** How many purchase orders there are, closed ones too. */
    public int purchaseCount() {
        return handle.createQuery("select count(*) from purchase")
                .mapTo(Integer.class)
                .one();
    }

    public Optional<PurchaseStanding> purchase(String number) {
        return handle.createQuery("select * from purchase where purchase = ?")
                .bind(0, number)
                .map((row, context) -> purchase(row, lines(number)))
                .findOne();
    }

    private static PurchaseStanding purchase(ResultSet row, List<LineStanding> lines) throws SQLException {
        return new PurchaseStanding(
                row.getString("purchase"),
                row.getString("supplier"),
                row.getString("currency"),
                LocalDate.parse(row.getString("placed_on")),
                row.getString("state").equals("open"),
                List.copyOf(lines));
    }

    private List<LineStanding> lines(String purchase) {
        return handle.createQuery("select * from purchase_line where purchase = ? order by line")
                .bind(0, purchase)
                .map((row, context) -> line(row))
                .list();
    }

    private static LineStanding line(ResultSet row) throws SQLException {
        return new LineStanding(
                row.getString("part"),
                row.getString("order_code"),
                new BigDecimal(row.getString("quantity")),
                row.getString("unit"),
                new BigDecimal(row.getString("unit_cost")),
                LocalDate.parse(row.getString("due")),
                new BigDecimal(row.getString("received")));
    }

    /** What is short of an order, as it was told when it was picked: by part and finish. */
    public SortedMap<String, BigDecimal> shortOf(String order) {
        SortedMap<String, BigDecimal> missing = new TreeMap<>();
        handle.createQuery("select * from pick_short where order_name = ? order by part, finish")
                .bind(0, order)
                .map((row, context) -> missing.put(
                        key(row.getString("part"), row.getString("finish")), new BigDecimal(row.getString("missing"))))
                .list();
        return missing;
    }

    /** A part and its finish in one text. */
    public static String key(String part, String finish) {
        return finish.isEmpty() ? part : part + " in " + finish;
    }
}
