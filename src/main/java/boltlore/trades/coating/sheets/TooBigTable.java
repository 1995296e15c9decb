package boltlore.trades.coating.sheets;

import boltlore.report.Column;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.TooBig;
import java.util.List;

/** Pieces of a batch's finish that the oven does not take, with the reason. */
final class TooBigTable {

    private static final Column[] COLUMNS = {
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(28),
        Column.text("marks", "Order and piece marks").atMost(30),
        Column.text("why", "Why").atMost(70),
        Column.whole("pieces", "Pieces"),
        Column.blank("where", "Coated where")
    };

    private static final Column[] WHY = {
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(28),
        Column.text("why", "Why").atMost(90)
    };

    private TooBigTable() {}

    /** Why pieces of a finish of our own go out; nothing where all of it goes out anyway. */
    static void outside(PageBuilder page, List<TooBig> tooBig) {
        if (!tooBig.isEmpty()) {
            TableBuilder table = Table.named("too-big").columns(WHY);
            tooBig.forEach(big -> PieceCells.named(table.row(), big.row()).put("why", big.why()));
            page.heading("Why they go out by themselves").add(table);
        }
    }

    /** Nothing where everything fits. */
    static void on(PageBuilder page, List<TooBig> tooBig) {
        if (tooBig.isEmpty()) {
            return;
        }
        TableBuilder table = Table.named("too-big").columns(COLUMNS);
        tooBig.forEach(big -> PieceCells.counted(table.row(), big.row()).put("why", big.why()));
        page.heading("Does not fit the oven, in no load and no figure above").add(table);
    }
}
