package boltlore.book.db;

import boltlore.book.Happening;
import boltlore.book.OrderHappening;
import boltlore.book.OrderState;
import boltlore.faults.Outcome;
import boltlore.json.Json;
import boltlore.json.JsonFile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Where each order stands, its choices, quotations and issued sheets. */
final class OrderSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of(
                "customer_order name",
                "order_choice order_name option_name",
                "order_chassis order_name",
                "quotation order_name version",
                "issued_sheet order_name entry sheet");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof OrderHappening ofOrder) {
            if (ofOrder instanceof OrderHappening.Drafted drafted) {
                drafted(handle, drafted);
            } else if (ofOrder instanceof OrderHappening.Quoted quoted) {
                quoted(handle, entry, quoted);
            } else if (ofOrder instanceof OrderHappening.Ordered ordered) {
                ordered(handle, ordered);
            } else if (ofOrder instanceof OrderHappening.Moved moved) {
                state(handle, moved.order(), moved.to());
            } else if (ofOrder instanceof OrderHappening.Issued issued) {
                issued.sheets()
                        .forEach((sheet, hash) -> handle.execute(
                                "insert into issued_sheet (order_name, entry, sheet, hash) values (?, ?, ?, ?)",
                                issued.order(),
                                entry,
                                sheet,
                                hash));
            }
        }
    }

    /** A quoted order that is taken down otherwise keeps its quotations. */
    private static void drafted(Handle handle, OrderHappening.Drafted drafted) {
        handle.execute(
                "insert into customer_order (name, family, state, customer, partner, due, draft, version, confirmed, kit,"
                        + " resolved, catalogue) values (?, ?, ?, ?, ?, ?, ?, 0, 0, '', '', '') on conflict (name) do update"
                        + " set family = excluded.family, customer = excluded.customer, partner = excluded.partner,"
                        + " due = excluded.due, draft = excluded.draft",
                drafted.order(),
                drafted.family(),
                OrderState.DRAFT.written(),
                drafted.customer(),
                drafted.partner(),
                text(drafted.due()),
                drafted.content());
        choices(handle, drafted);
        handle.execute("delete from order_chassis where order_name = ?", drafted.order());
        chassis(handle, drafted.content())
                .ifPresent(chassis -> handle.execute(
                        "insert into order_chassis (order_name, chassis) values (?, ?)", drafted.order(), chassis));
    }

    /** As the order itself gives it, where it does. */
    private static Optional<String> chassis(Handle handle, String content) {
        Contents contents = new Contents(handle);
        return contents.has(content)
                        && JsonFile.parse(content, contents.of(content)) instanceof Outcome.Sound<Json> read
                        && read.value() instanceof Json.Obj order
                        && order.members().get("chassis") instanceof Json.Text chassis
                ? Optional.of(chassis.text())
                : Optional.empty();
    }

    private static void choices(Handle handle, OrderHappening.Drafted drafted) {
        handle.execute("delete from order_choice where order_name = ?", drafted.order());
        try (var batch = handle.prepareBatch(
                "insert into order_choice (order_name, option_name, option_value) values (?, ?, ?)")) {
            drafted.choices().forEach((option, value) -> batch.add(drafted.order(), option, value));
            if (!drafted.choices().isEmpty()) {
                batch.execute();
            }
        }
    }

    private static void quoted(Handle handle, long entry, OrderHappening.Quoted quoted) {
        handle.execute(
                "insert into quotation (order_name, version, entry, quoted_on, valid_until, currency, net, total,"
                        + " lead_days, content, kit, catalogue, figures, cost, findings, needs)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                quoted.order(),
                quoted.version(),
                entry,
                quoted.offer().on().toString(),
                quoted.offer().validUntil().toString(),
                quoted.offer().currency(),
                quoted.offer().net().toPlainString(),
                quoted.offer().total().toPlainString(),
                quoted.offer().leadDays(),
                quoted.stands().order(),
                quoted.stands().kit(),
                quoted.stands().catalogue(),
                quoted.stands().figures(),
                quoted.stands().cost(),
                quoted.stands().findings(),
                quoted.stands().needs());
        handle.execute(
                "update customer_order set version = ?, kit = ?, resolved = ?, catalogue = ?, needs = ?"
                        + " where name = ?",
                quoted.version(),
                quoted.stands().kit(),
                quoted.stands().kit(),
                quoted.stands().catalogue(),
                quoted.stands().needs(),
                quoted.order());
        state(handle, quoted.order(), OrderState.QUOTED);
    }

    /** The version confirmed is the last one: its kit and catalogue stand there already. */
    private static void ordered(Handle handle, OrderHappening.Ordered ordered) {
        handle.execute(
                "update customer_order set confirmed = ?, due = ? where name = ?",
                ordered.version(),
                text(ordered.due()),
                ordered.order());
        state(handle, ordered.order(), OrderState.ORDERED);
    }

    private static void state(Handle handle, String order, OrderState state) {
        handle.execute("update customer_order set state = ? where name = ?", state.written(), order);
    }

    private static String text(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }
}
