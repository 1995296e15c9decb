package boltlore.book.db;

import boltlore.book.ChangeHappening;
import boltlore.book.ChangeState;
import boltlore.book.Frozen;
import boltlore.book.Happening;
import boltlore.book.OrderChange;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jdbi.v3.core.Handle;

/** The changes of each frozen order, and what an accepted one makes of the order. */
final class ChangeSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of("order_change order_name number", "change_choice order_name number option_name");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof ChangeHappening ofChange) {
            if (ofChange instanceof ChangeHappening.Proposed proposed) {
                proposed(handle, entry, proposed);
            } else if (ofChange instanceof ChangeHappening.Decided decided) {
                decided(handle, decided);
            } else if (ofChange instanceof ChangeHappening.ServiceAdded added) {
                added(handle, entry, added);
            }
        }
    }

    private static void proposed(Handle handle, long entry, ChangeHappening.Proposed proposed) {
        insert(
                handle,
                entry,
                proposed,
                proposed.asker().name().toLowerCase(Locale.ROOT),
                ChangeState.PROPOSED,
                proposed.from(),
                proposed.offer().currency(),
                proposed.offer().net(),
                proposed.offer().leadDays(),
                proposed.stands());
        if (!proposed.choices().isEmpty()) {
            try (var batch = handle.prepareBatch("insert into change_choice (order_name, number, option_name,"
                    + " option_value) values (?, ?, ?, ?)")) {
                proposed.choices()
                        .forEach((option, value) -> batch.add(proposed.order(), proposed.number(), option, value));
                batch.execute();
            }
        }
    }

    private static void added(Handle handle, long entry, ChangeHappening.ServiceAdded added) {
        String from = handle.createQuery("select kit from customer_order where name = ?")
                .bind(0, added.order())
                .mapTo(String.class)
                .one();
        insert(
                handle,
                entry,
                added,
                OrderChange.SERVICE,
                ChangeState.ACCEPTED,
                from,
                added.currency(),
                added.net(),
                0,
                new Frozen("", added.kit(), "", "", "", "", ""));
        handle.execute("update customer_order set kit = ? where name = ?", added.kit(), added.order());
    }

    private static void insert(
            Handle handle,
            long entry,
            ChangeHappening change,
            String asker,
            ChangeState state,
            String from,
            String currency,
            BigDecimal net,
            int leadDays,
            Frozen stands) {
        handle.execute(
                "insert into order_change (order_name, number, entry, asker, state, from_kit, currency, net, lead_days,"
                        + " content, kit, catalogue, figures, cost, findings, needs)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                change.order(),
                change.number(),
                entry,
                asker,
                state.written(),
                from,
                currency,
                net.toPlainString(),
                leadDays,
                stands.order(),
                stands.kit(),
                stands.catalogue(),
                stands.figures(),
                stands.cost(),
                stands.findings(),
                stands.needs());
    }

    private static void decided(Handle handle, ChangeHappening.Decided decided) {
        handle.execute(
                "update order_change set state = ? where order_name = ? and number = ?",
                decided.state().written(),
                decided.order(),
                decided.number());
        if (decided.state() == ChangeState.ACCEPTED) {
            accepted(handle, decided);
        }
    }

    private static void accepted(Handle handle, ChangeHappening.Decided decided) {
        for (String column : List.of(
                "draft = (select content",
                "kit = (select kit",
                "resolved = (select kit",
                "catalogue = (select catalogue",
                "needs = (select needs")) {
            handle.execute(
                    "update customer_order set " + column
                            + " from order_change where order_name = ? and number = ?) where name = ?",
                    decided.order(),
                    decided.number(),
                    decided.order());
        }
        handle.execute("delete from order_choice where order_name = ?", decided.order());
        handle.execute(
                "insert into order_choice (order_name, option_name, option_value) select order_name, option_name,"
                        + " option_value from change_choice where order_name = ? and number = ?",
                decided.order(),
                decided.number());
    }
}
