package boltlore.trades.weighing.sheets;

import boltlore.report.Column;
import boltlore.report.Table;
import boltlore.report.TableBuilder;
import boltlore.trades.weighing.OnAxles;
import boltlore.trades.weighing.Stand;

/** Boxes for what the weighbridge shows, beside what was computed. */
final class BridgeTable {

    private static final Column[] COLUMNS = {
        Column.text("stand", "On the weighbridge").atMost(40),
        Column.decimal("front", "Front computed", 1).in("kg"),
        Column.blank("front-weighed", "Front weighed (kg)"),
        Column.decimal("rear", "Rear computed", 1).in("kg"),
        Column.blank("rear-weighed", "Rear weighed (kg)"),
        Column.signature("by", "Date and name")
    };

    private BridgeTable() {}

    static TableBuilder of(OnAxles onAxles) {
        TableBuilder table = Table.named("weighbridge").columns(COLUMNS);
        onAxles.standings().stream()
                .filter(each -> each.stand().compareTo(Stand.DRIVER) <= 0)
                .forEach(each -> table.row()
                        .put("stand", each.stand().says())
                        .put("front", each.loads().frontKg())
                        .put("rear", each.loads().rearKg()));
        return table;
    }
}
