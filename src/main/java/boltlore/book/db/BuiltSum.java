package boltlore.book.db;

import boltlore.book.BuiltHappening;
import boltlore.book.Happening;
import java.math.BigDecimal;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What was done to each kit and what is in it. */
final class BuiltSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of(
                "order_work order_name part revision finish stage",
                "vehicle order_name",
                "built_part entry",
                "built_note entry",
                "built_reading entry");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof BuiltHappening built) {
            if (built instanceof BuiltHappening.Fitted fitted) {
                fitted(handle, entry, fitted);
            } else if (built instanceof BuiltHappening.TakenOut out) {
                handle.execute("update built_part set taken_out = ? where entry = ?", entry, out.fitted());
            } else if (built instanceof BuiltHappening.Noted noted) {
                handle.execute(
                        "insert into built_note (entry, order_name, what, of_what, says, person)"
                                + " select ?, ?, ?, ?, ?, person from journal where number = ?",
                        entry,
                        noted.order(),
                        noted.what(),
                        noted.of(),
                        noted.says(),
                        entry);
            } else if (built instanceof BuiltHappening.Measured measured) {
                measured(handle, entry, measured);
            } else if (built instanceof BuiltHappening.OfVehicle vehicle) {
                handle.execute(
                        "insert into vehicle (order_name, chassis) values (?, ?)"
                                + " on conflict (order_name) do update set chassis = excluded.chassis",
                        vehicle.order(),
                        vehicle.chassis());
            } else if (built instanceof BuiltHappening.Worked worked) {
                worked(handle, worked);
            }
        }
    }

    private static void measured(Handle handle, long entry, BuiltHappening.Measured measured) {
        handle.execute(
                "insert into built_reading (entry, order_name, of_what, value, unit, least, most, within_limits)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                entry,
                measured.order(),
                measured.of(),
                measured.value().toPlainString(),
                measured.unit(),
                measured.least() == null ? "" : measured.least().toPlainString(),
                measured.most() == null ? "" : measured.most().toPlainString(),
                measured.within() ? 1 : 0);
    }

    private static void fitted(Handle handle, long entry, BuiltHappening.Fitted fitted) {
        handle.execute(
                "insert into built_part (entry, order_name, part, revision, quantity, serial, lot, heat, taken_out)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, 0)",
                entry,
                fitted.order(),
                fitted.part(),
                fitted.revision(),
                fitted.quantity().toPlainString(),
                fitted.serial(),
                fitted.lot(),
                fitted.heat());
    }

    private static void worked(Handle handle, BuiltHappening.Worked worked) {
        Object[] key = {worked.order(), worked.part(), worked.revision(), worked.finish(), worked.stage()};
        String where = " where order_name = ? and part = ? and revision = ? and finish = ? and stage = ?";
        BigDecimal before = handle.select("select quantity from order_work" + where, key)
                .mapTo(String.class)
                .findOne()
                .map(BigDecimal::new)
                .orElse(BigDecimal.ZERO);
        handle.execute("delete from order_work" + where, key);
        BigDecimal now = before.add(worked.quantity());
        if (now.signum() != 0) {
            handle.execute(
                    "insert into order_work (order_name, part, revision, finish, stage, quantity)"
                            + " values (?, ?, ?, ?, ?, ?)",
                    worked.order(),
                    worked.part(),
                    worked.revision(),
                    worked.finish(),
                    worked.stage(),
                    now.toPlainString());
        }
    }
}
