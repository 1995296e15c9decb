package boltlore.book.db;

import boltlore.book.BuiltHappening;
import boltlore.book.BuiltNote;
import boltlore.book.BuiltPart;
import boltlore.book.BuiltReading;
import boltlore.book.OrderState;
import boltlore.book.Recalled;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/** What is in each kit, and which kits hold something. */
public final class AsBuilt {

    private final Handle handle;

    AsBuilt(Handle handle) {
        this.handle = handle;
    }

    /** All that ever went in, in the order in which it did. */
    public List<BuiltPart> parts(String order) {
        return handle.createQuery("select * from built_part where order_name = ? order by entry")
                .bind(0, order)
                .map((row, context) -> part(row))
                .list();
    }

    public Optional<BuiltPart> fitted(long entry) {
        return handle.createQuery("select * from built_part where entry = ?")
                .bind(0, entry)
                .map((row, context) -> part(row))
                .findOne();
    }

    /** Where the piece with that serial number is in now. */
    public Optional<BuiltPart> inWith(String part, String serial) {
        return handle.createQuery("select * from built_part where serial = ? and part = ? and taken_out = 0")
                .bind(0, serial)
                .bind(1, part)
                .map((row, context) -> part(row))
                .findFirst();
    }

    public List<BuiltNote> notes(String order) {
        return handle.createQuery("select * from built_note where order_name = ? order by entry")
                .bind(0, order)
                .map((row, context) -> new BuiltNote(
                        row.getString("order_name"),
                        row.getLong("entry"),
                        row.getString("what"),
                        row.getString("of_what"),
                        row.getString("says"),
                        row.getString("person")))
                .list();
    }

    /** Values that were read of it, the first one first; the last of each kind is the one that counts. */
    public List<BuiltReading> readings(String order) {
        return handle.createQuery("select r.*, j.person from built_reading r join journal j on j.number = r.entry"
                        + " where r.order_name = ? order by r.entry")
                .bind(0, order)
                .map((row, context) -> new BuiltReading(
                        row.getLong("entry"),
                        new BuiltHappening.Measured(
                                row.getString("order_name"),
                                row.getString("of_what"),
                                new BigDecimal(row.getString("value")),
                                row.getString("unit"),
                                limit(row.getString("least")),
                                limit(row.getString("most"))),
                        row.getString("person")))
                .list();
    }

    private static @Nullable BigDecimal limit(String kept) {
        return kept.isEmpty() ? null : new BigDecimal(kept);
    }

    public Optional<String> chassis(String order) {
        return handle.createQuery("select chassis from vehicle where order_name = ?")
                .bind(0, order)
                .mapTo(String.class)
                .findOne();
    }

    /** Orders of one vehicle, by number: as it was built, or as the order says it. */
    public List<String> ofChassis(String chassis) {
        return handle.createQuery("select order_name from vehicle where lower(chassis) = lower(:chassis) union"
                        + " select order_name from order_chassis where lower(chassis) = lower(:chassis)"
                        + " order by order_name")
                .bind("chassis", chassis)
                .mapTo(String.class)
                .list();
    }

    /** What of it is in no kit. */
    public List<String> inStores(Asked asked) {
        return new OutOfKits(handle).of(asked);
    }

    /** Whether any kit, store or purchase order of the book has that part, however it is written. */
    public boolean knowsPart(String part) {
        return new OutOfKits(handle).knowsPart(part);
    }

    /**
     * What is looked for; empty texts do not matter. A serial number, lot or heat is looked for in what was built in; a part
     * or drawing also in what was resolved, as the kit may not be built yet.
     */
    public record Asked(
            String part, String revision, String drawing, String issue, String serial, String lot, String heat) {

        boolean builtOnly() {
            return !(serial.isEmpty() && lot.isEmpty() && heat.isEmpty());
        }
    }

    /** Every order that holds it, with state, customer's key and why; each reason once. */
    public List<Recalled> holding(Asked asked) {
        Set<Recalled> found = new LinkedHashSet<>();
        if (asked.drawing().isEmpty()) {
            found.addAll(built(asked));
            found.addAll(inside(asked));
        }
        if (!asked.builtOnly()) {
            found.addAll(designed(asked));
        }
        List<Recalled> sorted = new ArrayList<>(found);
        sorted.sort(Recalled.BY_ORDER);
        return sorted;
    }

    private List<Recalled> built(Asked asked) {
        StringBuilder where = new StringBuilder("select b.*, o.state, o.customer, v.chassis from built_part b"
                + " join customer_order o on o.name = b.order_name left join vehicle v on v.order_name = b.order_name"
                + " where 1 = 1");
        for (String column : List.of("part", "revision", "serial", "lot", "heat")) {
            where.append(value(asked, column).isEmpty() ? "" : " and lower(b." + column + ") = lower(:" + column + ")");
        }
        Query query = handle.createQuery(where.toString());
        for (String column : List.of("part", "revision", "serial", "lot", "heat")) {
            if (!value(asked, column).isEmpty()) {
                query.bind(column, value(asked, column));
            }
        }
        return query.map((row, context) -> {
                    BuiltPart part = part(row);
                    return recalled(row, part.part(), part.revision(), part.says(), part.out() > 0);
                })
                .list();
    }

    /**
     * Kits that have got an assembly after it was made of the lot or piece, at whatever depth. Which of several assemblies it
     * went into nobody has written down, so each of them may hold it.
     */
    private List<Recalled> inside(Asked asked) {
        if (asked.lot().isEmpty() && asked.serial().isEmpty()) {
            return List.of();
        }
        String column = asked.lot().isEmpty() ? "serial" : "lot";
        return handle.createQuery("with recursive inside (part, entry) as (select into_part, entry from built_in where "
                        + "lower(" + column
                        + ") = lower(:number) and (:part = '' or lower(part) = lower(:part)) union select b.into_part, b.entry"
                        + " from built_in b join inside i on b.part = i.part and b.entry > i.entry)"
                        + " select distinct g.order_name, g.part, o.state, o.customer, v.chassis from issued_part g"
                        + " join inside i on i.part = g.part and i.entry < g.entry"
                        + " join customer_order o on o.name = g.order_name"
                        + " left join vehicle v on v.order_name = g.order_name")
                .bind("number", value(asked, column))
                .bind("part", asked.part())
                .map((row, context) -> recalled(
                        row,
                        row.getString("part"),
                        "",
                        "may hold it: made here with " + (asked.lot().isEmpty() ? "that piece" : "that lot")
                                + " in the stores",
                        false))
                .list();
    }

    private static String value(Asked asked, String column) {
        return switch (column) {
            case "part" -> asked.part();
            case "revision" -> asked.revision();
            case "serial" -> asked.serial();
            case "lot" -> asked.lot();
            case "heat" -> asked.heat();
            case "drawing" -> asked.drawing();
            default -> asked.issue();
        };
    }

    private List<Recalled> designed(Asked asked) {
        StringBuilder where = new StringBuilder("select distinct o.name as order_name, o.state, o.customer, v.chassis,"
                + " l.part, l.revision, l.drawing, l.issue from kit_line l join customer_order o on o.kit = l.kit"
                + " left join vehicle v on v.order_name = o.name where 1 = 1");
        for (String column : List.of("part", "revision", "drawing", "issue")) {
            where.append(value(asked, column).isEmpty() ? "" : " and lower(l." + column + ") = lower(:" + column + ")");
        }
        Query query = handle.createQuery(where.toString());
        for (String column : List.of("part", "revision", "drawing", "issue")) {
            if (!value(asked, column).isEmpty()) {
                query.bind(column, value(asked, column));
            }
        }
        return query.map((row, context) -> recalled(
                        row,
                        row.getString("part"),
                        row.getString("revision"),
                        row.getString("drawing").isEmpty()
                                ? "in the kit as designed"
                                : "in the kit as designed, drawing " + row.getString("drawing") + " issue "
                                        + row.getString("issue"),
                        false))
                .list();
    }

    private static Recalled recalled(ResultSet row, String part, String revision, String says, boolean out)
            throws SQLException {
        OrderState state = Orders.state(row.getString("state"));
        String chassis = row.getString("chassis");
        return new Recalled(
                row.getString("order_name"),
                state,
                row.getString("customer"),
                chassis == null ? "" : chassis,
                part,
                revision,
                says,
                out);
    }

    private static BuiltPart part(ResultSet row) throws SQLException {
        return new BuiltPart(
                row.getString("order_name"),
                row.getLong("entry"),
                row.getString("part"),
                row.getString("revision"),
                new BigDecimal(row.getString("quantity")),
                row.getString("serial"),
                row.getString("lot"),
                row.getString("heat"),
                row.getLong("taken_out"));
    }
}
