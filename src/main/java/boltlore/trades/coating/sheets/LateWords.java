package boltlore.trades.coating.sheets;

import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.OrderThrough;

/** A late order in words. */
public final class LateWords {

    private LateWords() {}

    public static String of(LateMoves moves) {
        long more = moves.loads().stream().filter(move -> move.before() != null).count();
        long added = moves.loads().size() - more;
        long others =
                moves.orders().stream().filter(move -> move.before() != null).count();
        int runs = moves.after().runs().size() - moves.planned().runs().size();
        return "Nothing that is planned is hung elsewhere. "
                + count(more, "load takes more pieces", "loads take more pieces") + ", "
                + count(added, "load is new", "loads are new")
                + (runs > 0 ? ", with " + CoatWords.count(runs, "more run", "more runs") : "") + "; "
                + count(others, "other order is touched in its day", "other orders are touched in their day") + ". "
                + afresh(moves);
    }

    private static String count(long number, String one, String many) {
        return number == 0 ? "no " + one : CoatWords.count(number, one, many);
    }

    private static String afresh(LateMoves moves) {
        long now = moves.after().loads().count();
        return "Loads in all: " + moves.planned().loads().count() + " before, " + now + " now, " + moves.loadsAfresh()
                + " if everything were planned afresh.";
    }

    static String remark(LateMoves.OrderMove move, CoatJob job) {
        OrderThrough before = move.before();
        boolean late = move.after().late(job.start());
        if (before == null) {
            return late ? "the late order, later than needed: tell sales" : "the late order";
        }
        boolean was = before.late(job.start());
        return late ? (was ? "later than needed as before" : "now later than needed: tell sales") : "";
    }
}
