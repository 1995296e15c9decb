package boltlore.book.db;

import boltlore.book.OrderStanding;
import boltlore.book.OrderState;
import boltlore.book.PurchaseStanding;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** What orders have not got yet, and what all of them together lack. Quantities are in each part's unit. */
public final class Needs {

    /** Quantities have at most so many decimals, and are whole numbers of the last of them in the tables. */
    static final int DIGITS = 6;

    private final Handle handle;

    Needs(Handle handle) {
        this.handle = handle;
    }

    /** So much of a part in a finish an order has still to get on a day. */
    public record Open(String order, String part, String finish, LocalDate day, BigDecimal quantity) {}

    /**
     * What all orders together ask of a part in a finish, as the stores hand it out, and what there is of it.
     *
     * @param coming ordered and not received yet
     * @param first day on which some of it is asked for
     */
    public record Lacking(
            String part, String finish, BigDecimal needed, BigDecimal inStock, BigDecimal coming, LocalDate first) {

        /** What neither lies there nor is ordered; 0 or more. */
        public BigDecimal lacks() {
            return needed.subtract(inStock).subtract(coming).max(BigDecimal.ZERO);
        }

        String key() {
            return Stock.key(part, finish);
        }
    }

    static boolean isKept(Handle handle, String needs) {
        return handle.createQuery("select 1 from kit_need where needs = ? limit 1")
                .bind(0, needs)
                .mapTo(Integer.class)
                .findOne()
                .isPresent();
    }

    static long micro(BigDecimal quantity) {
        return quantity.movePointRight(DIGITS).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    static BigDecimal whole(long micro) {
        return BigDecimal.valueOf(micro, DIGITS).stripTrailingZeros();
    }

    static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    /** What an order has still to get, by part. */
    public List<Open> of(String order) {
        return handle.createQuery("select * from open_need where order_name = ? order by part, finish, day")
                .bind(0, order)
                .map((row, context) -> open(row))
                .list();
    }

    /** What the kit of an order asks of the stores, spares for its bags among it, by part in whatever finish. */
    public Map<String, BigDecimal> asked(String order) {
        Map<String, BigDecimal> asked = new HashMap<>();
        handle.createQuery("select n.part, sum(n.micro) from kit_need n join customer_order o on o.needs = n.needs"
                        + " where o.name = ? group by n.part")
                .bind(0, order)
                .map((row, context) -> asked.put(row.getString(1), whole(row.getLong(2))))
                .list();
        return asked;
    }

    /** What an order has got above what its kit asks of the stores, each as '2 PX-12 in grey'; none where that was not kept. */
    public List<String> above(String order) {
        Map<String, BigDecimal> asked = new HashMap<>();
        handle.createQuery("select n.part, n.finish, sum(n.micro) from kit_need n join customer_order o"
                        + " on o.needs = n.needs where o.name = ? group by n.part, n.finish")
                .bind(0, order)
                .map((row, context) -> asked.put(Stock.key(row.getString(1), row.getString(2)), whole(row.getLong(3))))
                .list();
        SortedMap<String, BigDecimal> got = new TreeMap<>();
        new Stock(handle)
                .issuedTo(order)
                .forEach(issued -> got.merge(
                        Stock.key(
                                issued.instead().isEmpty() ? issued.held().part() : issued.instead(),
                                issued.held().finish()),
                        issued.quantity(),
                        BigDecimal::add));
        return asked.isEmpty()
                ? List.of()
                : got.entrySet().stream()
                        .map(each -> Map.entry(
                                each.getKey(),
                                each.getValue().subtract(asked.getOrDefault(each.getKey(), BigDecimal.ZERO))))
                        .filter(each -> each.getValue().signum() > 0)
                        .map(each -> each.getValue().toPlainString() + " " + each.getKey())
                        .toList();
    }

    /** Who has still to get that part in that finish, the earliest day first. */
    public List<Open> forWhom(String part, String finish) {
        return handle.createQuery("select * from open_need where part = ? and finish = ? order by day, order_name")
                .bind(0, part)
                .bind(1, finish)
                .map((row, context) -> open(row))
                .list();
    }

    /**
     * An order that is owed.
     *
     * @param due the day that was agreed, else the first one that was quoted
     * @param parts that it has still to get, each in its finish
     */
    public record Owed(OrderStanding order, LocalDate due, int parts) {}

    /** All orders that are owed, by when they are due. */
    public List<Owed> owed() {
        return handle
                .createQuery("select o.*, q.quoted_on, q.lead_days,"
                        + " (select count(distinct n.part || ' ' || n.finish) from open_need n where n.order_name = o.name) as parts"
                        + " from customer_order o left join quotation q on q.order_name = o.name"
                        + " and q.version = o.version where o.state in (<states>)")
                .bindList(
                        "states",
                        OrderState.ALL.stream()
                                .filter(OrderState::owed)
                                .map(OrderState::written)
                                .toList())
                .map((row, context) -> new Owed(Orders.standing(row), due(row), row.getInt("parts")))
                .stream()
                .sorted(Comparator.comparing(Owed::due)
                        .thenComparing(owed -> owed.order().name()))
                .toList();
    }

    /** What was neither promised nor quoted has no needs either, whatever its day. */
    static LocalDate due(ResultSet row) throws SQLException {
        String promised = row.getString("due");
        String quoted = row.getString("quoted_on");
        if (!promised.isEmpty()) {
            return LocalDate.parse(promised);
        }
        return quoted == null ? LocalDate.EPOCH : LocalDate.parse(quoted).plusDays(row.getInt("lead_days"));
    }

    /** All that the kit of an order asks for, whatever it has got. */
    public List<Open> whole(Owed owed) {
        return handle.createQuery("select n.* from kit_need n join customer_order o on o.needs = n.needs"
                        + " where o.name = ? order by part, finish, days_before desc")
                .bind(0, owed.order().name())
                .map((row, context) -> new Open(
                        owed.order().name(),
                        row.getString("part"),
                        row.getString("finish"),
                        owed.due().minusDays(row.getInt("days_before")),
                        whole(row.getLong("micro"))))
                .list();
    }

    /**
     * Who has still to get a part.
     *
     * @param first some of them, by the earliest day
     * @param all how many there are
     */
    public record Askers(List<String> first, int all) {}

    /** Who has still to get that part in that finish; at most so many by name. */
    public Askers askers(String part, String finish, int most) {
        int[] all = {0};
        List<String> first = handle.createQuery("select order_name, count(*) over () as askers from open_need"
                        + " where part = ? and finish = ? group by order_name order by min(day), order_name limit ?")
                .bind(0, part)
                .bind(1, finish)
                .bind(2, most)
                .map((row, context) -> {
                    all[0] = row.getInt("askers");
                    return row.getString("order_name");
                })
                .list();
        return new Askers(first, all[0]);
    }

    /** What is still to be sent after kits that have been shipped: parts that were short then, and service parts. */
    public List<Open> afterShipping() {
        return handle.createQuery("select n.* from open_need n join customer_order o on o.name = n.order_name"
                        + " where o.state = 'shipped' order by n.day, n.order_name, n.part, n.finish")
                .map((row, context) -> open(row))
                .list();
    }

    static Open open(ResultSet row) throws SQLException {
        return new Open(
                row.getString("order_name"),
                row.getString("part"),
                row.getString("finish"),
                LocalDate.ofEpochDay(row.getLong("day")),
                whole(row.getLong("micro")));
    }

    /**
     * What is asked for and neither lies there nor is ordered, first what is asked for first.
     *
     * @param most at most so many
     */
    public List<Lacking> lacking(int most) {
        Map<String, BigDecimal> lying = lying();
        Map<String, BigDecimal> coming = coming();
        List<Lacking> all = new ArrayList<>();
        handle
                .createQuery(
                        "select p.part, p.finish, p.micro, (select min(o.day) from open_need o where o.part = p.part"
                                + " and o.finish = p.finish) from part_need p where p.micro > 0")
                .map((row, context) -> {
                    String key = Stock.key(row.getString(1), row.getString(2));
                    return new Lacking(
                            row.getString(1),
                            row.getString(2),
                            whole(row.getLong(3)),
                            lying.getOrDefault(key, BigDecimal.ZERO),
                            coming.getOrDefault(key, BigDecimal.ZERO),
                            LocalDate.ofEpochDay(row.getLong(4)));
                })
                .stream()
                .filter(item -> item.lacks().signum() > 0)
                .forEach(all::add);
        return all.stream()
                .sorted(Comparator.comparing(Lacking::first).thenComparing(Lacking::key))
                .limit(most)
                .toList();
    }

    /** The three columns alone: whole rows of all stock took half of the office's morning page. */
    private Map<String, BigDecimal> lying() {
        Map<String, BigDecimal> lying = new HashMap<>();
        handle.createQuery("select part, finish, quantity from stock")
                .map((row, context) -> lying.merge(
                        Stock.key(row.getString(1), row.getString(2)),
                        new BigDecimal(row.getString(3)),
                        BigDecimal::add))
                .list();
        return lying;
    }

    private Map<String, BigDecimal> coming() {
        Map<String, BigDecimal> coming = new HashMap<>();
        handle.createQuery("select l.part, l.quantity, l.received from purchase_line l"
                        + " join purchase p on p.purchase = l.purchase where p.state = 'open'")
                .map((row, context) -> coming.merge(
                        row.getString(1),
                        PurchaseStanding.left(new BigDecimal(row.getString(2)), new BigDecimal(row.getString(3))),
                        BigDecimal::add))
                .list();
        return coming;
    }
}
