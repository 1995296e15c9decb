package boltlore.book.db;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** What all orders together have still to get, day by day, and which of them stand behind it. */
public final class DayNeeds {

    private final Handle handle;

    DayNeeds(Handle handle) {
        this.handle = handle;
    }

    /**
     * What all orders together have still to get of an item on a day.
     *
     * @param quantity in the part's unit
     */
    public record OfDay(String part, String finish, LocalDate day, BigDecimal quantity) {

        private static final String BREAK = "\n";

        /** Names it, for {@link DayNeeds#behind}. */
        public String key() {
            return part + BREAK + finish + BREAK + day;
        }
    }

    /** What all orders together have still to get, by part, finish and day. */
    public List<OfDay> byDay() {
        return handle.createQuery("select part, finish, day, sum(micro) from open_need group by part, finish, day"
                        + " order by part, finish, day")
                .map((row, context) -> new OfDay(
                        row.getString(1),
                        row.getString(2),
                        LocalDate.ofEpochDay(row.getLong(3)),
                        Needs.whole(row.getLong(4))))
                .list();
    }

    /** Which orders ask for what a key of {@link OfDay} names, each for how much. */
    public SortedMap<String, BigDecimal> behind(String key) {
        String[] item = key.split(OfDay.BREAK, -1);
        SortedMap<String, BigDecimal> orders = new TreeMap<>();
        handle.createQuery("select order_name, micro from open_need where part = ? and finish = ? and day = ?")
                .bind(0, item[0])
                .bind(1, item[1])
                .bind(2, Needs.day(LocalDate.parse(item[2])))
                .map((row, context) -> orders.put(row.getString(1), Needs.whole(row.getLong(2))))
                .list();
        return orders;
    }

    /**
     * An order that asks for each item, by item: that of the last day.
     *
     * @param kit hash of its lines, or empty
     */
    public record Asker(String part, String finish, String order, String kit) {}

    /** Of each item that is asked for the order that asks for it last. */
    public List<Asker> askedLast() {
        return handle.createQuery("select i.part, i.finish, o.name, o.resolved from (select p.part, p.finish,"
                        + " (select n.order_name from open_need n where n.part = p.part and n.finish = p.finish"
                        + " order by n.day desc, n.order_name desc limit 1) as asking from part_need p where p.micro > 0) i"
                        + " join customer_order o on o.name = i.asking order by o.name, i.part, i.finish")
                .map((row, context) ->
                        new Asker(row.getString(1), row.getString(2), row.getString(3), row.getString(4)))
                .list();
    }

    /** Keys of {@link OfDay} behind which that order stands. */
    public Set<String> keys(String order) {
        return new Needs(handle)
                .of(order).stream()
                        .map(need -> new OfDay(need.part(), need.finish(), need.day(), need.quantity()).key())
                        .collect(Collectors.toSet());
    }

    /** Which orders ask for what each key of {@link OfDay} names: all of {@link #behind} at once. */
    public Map<String, SortedMap<String, BigDecimal>> behindAll() {
        Map<String, SortedMap<String, BigDecimal>> all = new HashMap<>();
        handle.createQuery("select * from open_need")
                .map((row, context) -> Needs.open(row))
                .forEach(need -> all.computeIfAbsent(
                                new OfDay(need.part(), need.finish(), need.day(), need.quantity()).key(),
                                any -> new TreeMap<>())
                        .put(need.order(), need.quantity()));
        return all;
    }
}
