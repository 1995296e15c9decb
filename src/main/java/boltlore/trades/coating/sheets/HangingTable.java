package boltlore.trades.coating.sheets;

import boltlore.catalogue.EnvelopeMm;
import boltlore.catalogue.Oven;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.coating.BatchRow;
import boltlore.trades.coating.OvenLoad;
import boltlore.trades.coating.hanging.Hung;
import org.jspecify.annotations.Nullable;

/** What hangs in a load, by the numbers of its drawing. */
final class HangingTable {

    private static final Column[] COLUMNS = {
        Column.whole("number", "No."),
        Column.text("part", "Part"),
        Column.text("name", "Name").atMost(30),
        Column.text("marks", "Order and piece marks").atMost(24),
        Column.whole("pieces", "Pieces"),
        Column.whole("hooks", "Hooks each"),
        Column.whole("along", "Along the rail").in("mm"),
        Column.whole("across", "Across").in("mm"),
        Column.whole("down", "Down").in("mm")
    };

    private HangingTable() {}

    static TableBuilder of(OvenLoad load, Oven oven) {
        TableBuilder table = Table.named("hanging").columns(COLUMNS);
        for (int i = 0; i < load.rows().size(); i++) {
            BatchRow row = load.rows().get(i);
            RowBuilder cells = PieceCells.counted(table.row(), row)
                    .put("number", i + 1)
                    .put("hooks", row.coat().hangPoints());
            sizes(cells, row.coat().envelope(), oven);
        }
        return table;
    }

    private static void sizes(RowBuilder cells, @Nullable EnvelopeMm envelope, Oven oven) {
        if (envelope != null) {
            Hung.of(envelope, oven.inside())
                    .ifPresent(hung -> cells.put("along", hung.alongMm())
                            .put("across", hung.acrossMm())
                            .put("down", hung.downMm()));
        }
    }
}
