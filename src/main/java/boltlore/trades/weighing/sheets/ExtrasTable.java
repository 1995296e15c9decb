package boltlore.trades.weighing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.AxleLoads;
import boltlore.trades.weighing.ExtraLoad;
import boltlore.trades.weighing.Weighing;

/** What the order's extras put on the axles, which is beside the kit. */
final class ExtrasTable {

    private static final Column[] COLUMNS = {
        Column.text("extra", "Extra of the order").atMost(50),
        Column.whole("station", "Behind front axle").in("mm"),
        Column.decimal("mass", "Mass", 1).in("kg"),
        Column.decimal("front", "Front axle", 1).in("kg"),
        Column.decimal("rear", "Rear axle", 1).in("kg")
    };

    private ExtrasTable() {}

    static TableBuilder of(Weighing weighing, int wheelbaseMm) {
        TableBuilder table = Table.named("extras").columns(COLUMNS);
        for (ExtraLoad extra : weighing.extras()) {
            AxleLoads loads = extra.on(wheelbaseMm);
            table.row()
                    .put("extra", extra.says())
                    .put("station", extra.at().behindFrontMm())
                    .put("mass", extra.massKg())
                    .put("front", loads.frontKg())
                    .put("rear", loads.rearKg());
        }
        return table;
    }
}
