package boltlore.book.db;

import boltlore.book.ChangeHappening;
import boltlore.book.ChangeState;
import boltlore.book.Happening;
import boltlore.book.KitLine;
import boltlore.book.KitNeed;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.book.StockHappening;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * What each order that is owed has not got yet, so that what all of them lack is a sum and no work. What a shipped kit left
 * without, and what a service order adds to it, stays until it is sent after it.
 */
final class NeedSum implements Sum {

    private static final String INSERT =
            "insert into open_need (order_name, part, finish, day, micro) values (?, ?, ?, ?, ?)"
                    + " on conflict (order_name, part, finish, day) do update set micro = open_need.micro + excluded.micro";

    private static final String TOTAL = "insert into part_need (part, finish, micro)";
    private static final String ADDED =
            " on conflict (part, finish) do update set micro = part_need.micro + excluded.micro";

    @Override
    public List<String> tables() {
        return List.of(
                "kit_need needs part finish days_before",
                "open_need order_name part finish day",
                "part_need part finish");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof OrderHappening.Quoted quoted) {
            keep(handle, quoted.stands().needs());
        } else if (happening instanceof ChangeHappening.Proposed proposed) {
            keep(handle, proposed.stands().needs());
        } else if (happening instanceof OrderHappening.Ordered ordered) {
            ask(handle, ordered.order());
        } else if (happening instanceof ChangeHappening.Decided decided && decided.state() == ChangeState.ACCEPTED) {
            ask(handle, decided.order());
        } else if (happening instanceof ChangeHappening.ServiceAdded added) {
            added(handle, entry, added);
        } else if (happening instanceof OrderHappening.Moved moved) {
            moved(handle, moved);
        } else if (happening instanceof StockHappening.Issued issued) {
            got(
                    handle,
                    issued.order(),
                    wanted(issued.held().part(), issued.instead()),
                    issued.held().finish(),
                    issued);
        } else if (happening instanceof StockHappening.Returned returned) {
            got(
                    handle,
                    returned.order(),
                    wanted(returned.held().part(), returned.instead()),
                    returned.held().finish(),
                    null);
        }
    }

    private static String wanted(String part, String instead) {
        return instead.isEmpty() ? part : instead;
    }

    private static void keep(Handle handle, String needs) {
        if (needs.isEmpty() || Needs.isKept(handle, needs)) {
            return;
        }
        try (var batch = handle.prepareBatch(
                "insert into kit_need (needs, part, finish, days_before, micro) values (?, ?, ?, ?, ?)")) {
            KitNeed.read(needs, new Contents(handle).of(needs))
                    .forEach(need -> batch.add(
                            needs, need.part(), need.finish(), need.daysBefore(), Needs.micro(need.quantity())));
            if (batch.size() > 0) {
                batch.execute();
            }
        }
    }

    /** Where an order stands, as far as its needs go. */
    private record Asked(String order, OrderState state, String needs, int due) {}

    private static Asked asked(Handle handle, String order) {
        return handle.createQuery("select o.*, q.quoted_on, q.lead_days from customer_order o left join quotation q"
                        + " on q.order_name = o.name and q.version = o.version where o.name = ?")
                .bind(0, order)
                .map((row, context) -> new Asked(
                        order, Orders.state(row.getString("state")), row.getString("needs"), Needs.day(Needs.due(row))))
                .one();
    }

    /** All that the kit asks for, less what the order has got. */
    private static void ask(Handle handle, String order) {
        Asked asked = asked(handle, order);
        forget(handle, order);
        handle.execute(
                "insert into open_need (order_name, part, finish, day, micro) select cast(? as text), part, finish,"
                        + " ? - days_before, micro from kit_need where needs = ?",
                order,
                asked.due(),
                asked.needs());
        total(handle, "+", "order_name = ?", order);
        new Stock(handle)
                .issuedTo(order).stream()
                        .map(issued -> List.of(
                                wanted(issued.held().part(), issued.instead()),
                                issued.held().finish()))
                        .distinct()
                        .forEach(item -> left(handle, asked, item.get(0), item.get(1)));
    }

    /** What is left of one item after all that the order has got of it, which was for its earliest days. */
    private static void left(Handle handle, Asked asked, String part, String finish) {
        List<KitNeedRow> rows = handle.createQuery(
                        "select days_before, micro from kit_need where needs = ? and part = ?"
                                + " and finish = ? order by days_before desc")
                .bind(0, asked.needs())
                .bind(1, part)
                .bind(2, finish)
                .map((row, context) -> new KitNeedRow(asked.due() - row.getInt(1), row.getLong(2)))
                .list();
        long got = new Stock(handle)
                .issuedTo(asked.order()).stream()
                        .filter(issued ->
                                wanted(issued.held().part(), issued.instead()).equals(part)
                                        && issued.held().finish().equals(finish))
                        .map(StockHappening.Issued::quantity)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .movePointRight(Needs.DIGITS)
                        .longValue();
        lay(handle, asked.order(), part, finish, rows, got);
    }

    /** Nothing of it is asked for any more. */
    private static void forget(Handle handle, String order) {
        total(handle, "-", "order_name = ?", order);
        handle.execute("delete from open_need where order_name = ?", order);
    }

    private static void forget(Handle handle, String order, String part, String finish) {
        String which = "order_name = ? and part = ? and finish = ?";
        total(handle, "-", which, order, part, finish);
        handle.execute("delete from open_need where " + which, order, part, finish);
    }

    private static void ask(Handle handle, String order, String part, String finish, int day, long micro) {
        handle.execute(INSERT, order, part, finish, day, micro);
        handle.execute(TOTAL + " values (?, ?, ?)" + ADDED, part, finish, micro);
    }

    /** Adds what rows say to what all orders together ask of each part, or takes it off. */
    private static void total(Handle handle, String sign, String which, Object... values) {
        handle.execute(
                TOTAL + " select part, finish, " + sign + "sum(micro) from open_need where " + which
                        + " group by part, finish" + ADDED,
                values);
    }

    private record KitNeedRow(int day, long micro) {}

    private static void lay(Handle handle, String order, String part, String finish, List<KitNeedRow> rows, long got) {
        forget(handle, order, part, finish);
        long over = got;
        for (KitNeedRow row : rows) {
            long covered = Math.min(over, row.micro());
            over -= covered;
            if (covered < row.micro()) {
                ask(handle, order, part, finish, row.day(), row.micro() - covered);
            }
        }
    }

    /** @param issued null where something came back */
    private static void got(
            Handle handle,
            String order,
            String part,
            String finish,
            StockHappening.@org.jspecify.annotations.Nullable Issued issued) {
        Asked asked = asked(handle, order);
        if (asked.state().owed()) {
            left(handle, asked, part, finish);
        } else if (issued != null) {
            List<KitNeedRow> rows = handle.createQuery("select day, micro from open_need where order_name = ?"
                            + " and part = ? and finish = ? order by day")
                    .bind(0, order)
                    .bind(1, part)
                    .bind(2, finish)
                    .map((row, context) -> new KitNeedRow(row.getInt(1), row.getLong(2)))
                    .list();
            lay(handle, order, part, finish, rows, Needs.micro(issued.quantity()));
        }
    }

    private static void moved(Handle handle, OrderHappening.Moved moved) {
        if (moved.to() == OrderState.CANCELLED) {
            forget(handle, moved.order());
        } else if (moved.to() == OrderState.SHIPPED) {
            Set<String> after = handle.createQuery("select still_open from picked_order where order_name = ?")
                    .bind(0, moved.order())
                    .mapTo(String.class)
                    .findOne()
                    .map(open -> Arrays.stream(open.split("\n", -1)).collect(Collectors.toSet()))
                    .orElse(Set.of());
            new Needs(handle)
                    .of(moved.order()).stream()
                            .filter(need -> !after.contains(Stock.key(need.part(), need.finish())))
                            .forEach(need -> forget(handle, moved.order(), need.part(), need.finish()));
        }
    }

    /** Wanted as soon as it can be had: on the day on which it was ordered. */
    private static void added(Handle handle, long entry, ChangeHappening.ServiceAdded added) {
        int day = handle.createQuery("select at from journal where number = ?")
                .bind(0, entry)
                .mapTo(String.class)
                .map(at -> Needs.day(LocalDate.parse(at.substring(0, "2026-11-30".length()))))
                .one();
        for (KitLine line : added.lines()) {
            ask(handle, added.order(), line.part(), line.finish(), day, Needs.micro(line.quantity()));
        }
    }
}
