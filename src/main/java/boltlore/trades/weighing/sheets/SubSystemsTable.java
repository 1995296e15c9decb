package boltlore.trades.weighing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.SubSystemLoad;
import boltlore.trades.weighing.Weighing;

/** What each sub-system of the kit puts on the axles. */
final class SubSystemsTable {

    private static final Column[] COLUMNS = {
        Column.text("sub-system", "Sub-system"),
        Column.decimal("mass", "Mass", 1).in("kg"),
        Column.decimal("front", "Front axle", 1).in("kg"),
        Column.decimal("rear", "Rear axle", 1).in("kg")
    };

    private SubSystemsTable() {}

    static TableBuilder of(Weighing weighing, int wheelbaseMm) {
        TableBuilder table = Table.named("sub-systems").columns(COLUMNS);
        AxleLoads all = AxleLoads.NONE;
        for (SubSystemLoad load : SubSystemLoad.of(weighing, wheelbaseMm)) {
            all = all.plus(load.loads());
            table.row()
                    .put("sub-system", load.subSystem())
                    .put("mass", load.loads().totalKg())
                    .put("front", load.loads().frontKg())
                    .put("rear", load.loads().rearKg());
        }
        table.total("total", "The whole kit")
                .sum("mass", all.totalKg())
                .sum("front", all.frontKg())
                .sum("rear", all.rearKg());
        return table;
    }
}
