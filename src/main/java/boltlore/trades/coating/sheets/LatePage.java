package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.LateMoves;
import boltlore.trades.coating.OrderThrough;

/** What a late order moves: loads that change, and orders whose day is touched. */
final class LatePage {

    private static final Column[] LOADS = {
        Column.text("load", "Load"),
        Column.text("run", "Run"),
        Column.text("powder", "Powder"),
        Column.text("change", "Change"),
        Column.whole("before", "Pieces before"),
        Column.whole("more", "More pieces"),
        Column.tick("told", "Told")
    };
    private static final Column[] ORDERS = {
        Column.text("order", "Order"),
        Column.text("need", "In store by"),
        Column.text("before", "Coated before"),
        Column.text("after", "Coated now"),
        Column.text("remark", "Remark").atMost(40),
        Column.tick("told", "Told")
    };

    private LatePage() {}

    static PageBuilder of(CoatJob job, LateMoves moves, String footer) {
        String order = moves.late().name();
        PageBuilder page = Page.named("Late order").landscape().footer(footer);
        page.title("Late order " + order + ": what it moves").note(LateWords.of(moves));
        page.heading("Loads that change").add(loads(moves));
        if (job.timetable().known()) {
            page.heading("Orders whose day is touched").add(orders(job, moves));
        }
        return page.signatures("Passed on to the coating shop by");
    }

    private static TableBuilder loads(LateMoves moves) {
        TableBuilder table = Table.named("late-loads").columns(LOADS);
        moves.loads()
                .forEach(move -> table.row()
                        .put("load", String.valueOf(move.after().number()))
                        .put("run", String.valueOf(move.run().number()))
                        .put("powder", move.run().powder())
                        .put("change", move.before() == null ? "new load" : "hang more in it")
                        .put("before", move.before() == null ? 0 : move.before().pieces())
                        .put("more", move.morePieces()));
        return table;
    }

    private static TableBuilder orders(CoatJob job, LateMoves moves) {
        TableBuilder table = Table.named("late-orders").columns(ORDERS);
        for (LateMoves.OrderMove move : moves.orders()) {
            OrderThrough before = move.before();
            table.row()
                    .put("order", move.after().order().name())
                    .put("need", CoatWords.day(move.after().needBy()))
                    .put("before", before == null ? "not planned" : job.day(before.day()))
                    .put("after", job.day(move.after().day()))
                    .put("remark", LateWords.remark(move, job));
        }
        return table;
    }
}
