package boltlore.trades.weighing.sheets;

import boltlore.catalogue.Removed;
import boltlore.report.Cell;
import boltlore.report.Column;
import boltlore.report.RowBuilder;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.Weighing;
import java.math.BigDecimal;

/** What comes off the donor vehicle. */
final class RemovedTable {

    private static final Column[] COLUMNS = {
        Column.text("what", "Comes off").atMost(50),
        Column.whole("station", "Behind front axle").in("mm"),
        Column.whole("height", "Above road").in("mm"),
        Column.decimal("mass", "Mass", 1).in("kg"),
        Column.blank("weighed", "Weighed (kg)")
    };

    private RemovedTable() {}

    static TableBuilder of(Weighing weighing) {
        TableBuilder table = Table.named("removed").columns(COLUMNS);
        weighing.removed().forEach(each -> fill(table.row(), each));
        table.total("total", "Comes off in all").sum("mass", weighing.removedKg());
        return table;
    }

    private static void fill(RowBuilder row, Removed removed) {
        Integer height = removed.at().heightMm();
        row.put("what", removed.says())
                .put("station", removed.at().behindFrontMm())
                .put("height", height == null ? Cell.EMPTY : Cell.of(BigDecimal.valueOf(height)))
                .put("mass", removed.massKg());
    }
}
