package boltlore.trades.picking.sheets;

import boltlore.report.Column;
import boltlore.report.Page;
import boltlore.report.PageBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.picking.PickRow;
import boltlore.trades.picking.PickingList;
import java.util.List;

/** A line for each piece of those parts of which several come, each with a serial number of its own. */
final class SerialsPage {

    private final List<PickRow> rows;
    private final Head head;

    SerialsPage(PickingList list, Head head) {
        this.rows = list.walk().stream().filter(Boxes::needsSerialsPage).toList();
        this.head = head;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    PageBuilder page() {
        TableBuilder table = Table.named("serials")
                .columns(
                        Column.text("part", "Part"),
                        Column.text("name", "Name"),
                        Column.text("piece", "Piece"),
                        Column.blank("number", "Serial number"),
                        Column.tick("secondCount", "2nd count"));
        rows.forEach(row -> pieces(table, row));
        return Page.named("Serials")
                .footer(head.footer("serial numbers"))
                .title("Serial numbers, " + head.order().name())
                .add(table)
                .signatures("Picked by", "Second count by");
    }

    private static void pieces(TableBuilder table, PickRow row) {
        int count = row.quantity().intValue();
        for (int piece = 1; piece <= count; piece++) {
            table.row()
                    .put("part", row.part().number().text())
                    .put("name", row.part().name().english())
                    .put("piece", piece + " of " + count);
        }
    }
}
