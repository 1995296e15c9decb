package boltlore.book.db;

import boltlore.book.Happening;
import boltlore.book.ShopHappening;
import boltlore.book.ShopHappening.Coat;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What the rooms have done: shorts, pieces in the coating shop, remnants, judged records. */
final class ShopSum implements Sum {

    @Override
    public List<String> tables() {
        return List.of(
                "pick_short order_name part finish",
                "coat_piece piece",
                "remnant remnant",
                "judged_record order_name entry");
    }

    @Override
    public void take(Handle handle, long entry, Happening happening) {
        if (happening instanceof ShopHappening.FoundShort missing) {
            missing(handle, entry, missing);
        } else if (happening instanceof ShopHappening.Coating coating) {
            coating(handle, entry, coating);
        } else if (happening instanceof ShopHappening.Kept kept) {
            kept(handle, entry, kept);
        } else if (happening instanceof ShopHappening.Used used) {
            handle.execute("update remnant set used_by = ? where remnant = ?", used.by(), used.remnant());
        } else if (happening instanceof ShopHappening.Judged judged) {
            judged(handle, entry, judged);
        }
    }

    private static void missing(Handle handle, long entry, ShopHappening.FoundShort missing) {
        handle.execute(
                "delete from pick_short where order_name = ? and part = ? and finish = ?",
                missing.order(),
                missing.part(),
                missing.finish());
        if (missing.missing().signum() > 0) {
            handle.execute(
                    "insert into pick_short (order_name, part, finish, missing, entry) values (?, ?, ?, ?, ?)",
                    missing.order(),
                    missing.part(),
                    missing.finish(),
                    StockSum.plain(missing.missing()),
                    entry);
        }
    }

    /** A piece that was rejected and waits again is on its next round. */
    private static void coating(Handle handle, long entry, ShopHappening.Coating coating) {
        handle.execute(
                "insert into coat_piece (piece, order_name, part, finish, state, load, again, entry)"
                        + " values (?, ?, ?, ?, ?, ?, 0, ?) on conflict (piece) do update set again = coat_piece.again +"
                        + " case when coat_piece.state = ? and excluded.state = ? then 1 else 0 end,"
                        + " finish = excluded.finish, state = excluded.state, load = excluded.load, entry = excluded.entry",
                coating.piece(),
                coating.order(),
                coating.part(),
                coating.finish(),
                coating.to().written(),
                coating.load(),
                entry,
                Coat.REJECTED.written(),
                Coat.WAITING.written());
    }

    private static void kept(Handle handle, long entry, ShopHappening.Kept kept) {
        handle.execute(
                "insert into remnant (remnant, material, length_mm, heat, left_by, used_by, entry)"
                        + " values (?, ?, ?, ?, ?, '', ?) on conflict (remnant) do update set heat = excluded.heat,"
                        + " length_mm = excluded.length_mm",
                kept.remnant(),
                kept.material(),
                StockSum.plain(kept.lengthMm()),
                kept.heat(),
                kept.from(),
                entry);
    }

    private static void judged(Handle handle, long entry, ShopHappening.Judged judged) {
        handle.execute(
                "insert into judged_record (order_name, entry, of_what, content, passed, findings)"
                        + " values (?, ?, ?, ?, ?, ?)",
                judged.order(),
                entry,
                judged.of(),
                judged.content(),
                judged.passed() ? 1 : 0,
                String.join("\n", judged.findings()));
    }
}
